// device: attiny85
// flags: -DF_CPU=1000000UL
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// A light on a waveform pin needs its timer in idle, and has it; the comparator and the second timer are for nothing.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static uint8_t noise = 0x5a;

ISR(WDT_vect)
{
    noise = (uint8_t)((noise >> 1) ^ (-(noise & 1) & 0xb8));
    OCR0A = noise;
}

int main(void)
{
    DDRB = _BV(PB0) | _BV(PB1); // finding: peripheral-on-in-sleep AC proven warning
    PORTB = _BV(PB2) | _BV(PB3) | _BV(PB4);
    TCCR0A = _BV(COM0A1) | _BV(WGM01) | _BV(WGM00);
    TCCR0B = _BV(CS00);
    TCCR1 = _BV(CS12); // finding: peripheral-on-in-sleep TIMER1 proven warning
    WDTCR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
