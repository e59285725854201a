// device: attiny85
// rules: load-driven-in-sleep, suppression-without-reason, unused-suppression
// board: PB0: { load: "pilot light", active: high, milliamps: 1 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    DDRB = _BV(PB0);
    /* powerlint: allow load-driven-in-sleep (the pilot light shows
       that the set has power) */
    PORTB = _BV(PB0) | _BV(PB3);
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
