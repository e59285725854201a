// device: atmega328p
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Wakes on the watchdog, measures one channel, and forgets to switch the converter off.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define PARK(port)       \
    do {                 \
        DDR##port = 0;   \
        PORT##port = 255; \
    } while (0)

static uint16_t history[16];
static uint8_t next;

EMPTY_INTERRUPT(WDT_vect)

static uint16_t sample(void)
{
    ADCSRA |= _BV(ADSC);
    while (ADCSRA & _BV(ADSC)) // finding: polling-wait ADCSRA proven warning
        ;
    return ADC;
}

int main(void)
{
    PARK(B);
    PARK(C);
    PARK(D);
    PORTC &= (uint8_t)~_BV(PC0);
    ADMUX = _BV(REFS0); // finding: analog-pin-buffer-on PC0 proven note
    ADCSRA = _BV(ADEN) | _BV(ADPS1) | _BV(ADPS0); // finding: peripheral-on-in-sleep ADC proven warning
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        history[next] = sample();
        next = (next + 1) % 16;
        sleep_mode();
    }
}
