// device: attiny13a
// option: HFUSE.BODLEVEL = 1
// This part stops the detector by a register of its own.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PORTB = _BV(PB3);
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // finding: brown-out-always-on BOD proven note {{BODCR}}
    }
}
