// device: atmega328p
// option: EFUSE.BODLEVEL = 6
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PCINT0_vect)

int main(void)
{
    PCMSK0 = 1;
    PCICR = _BV(PCIE0);
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode(); // finding: brown-out-always-on BOD proven note {{non-volatile}}
    }
}
