// device: atmega328p
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// Counts in non-volatile memory through the library; pins parked one by one, with a slip: PD3 instead of PD2 twice.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define PULL(port, n) (PORT##port |= (1 << (n)))

static uint8_t count;

EMPTY_INTERRUPT(WDT_vect)

static void save(uint8_t value)
{
    while (EECR & _BV(EEPE)) // finding: polling-wait EECR proven warning {{EE_READY_vect}}
        ;
    EEAR = 4;
    EEDR = value;
    EECR |= _BV(EEMPE);
    EECR |= _BV(EEPE);
}

int main(void)
{
    DDRB = 255; // finding: floating-pin PD2 proven note
    DDRC = 255;
    PULL(D, 0);
    PULL(D, 1);
    PULL(D, 3);
    PULL(D, 3);
    PULL(D, 4);
    PULL(D, 5);
    PULL(D, 6);
    PULL(D, 7);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        save(++count);
        sleep_mode();
    }
}
