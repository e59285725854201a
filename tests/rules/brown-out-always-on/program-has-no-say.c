// device: atmega2560
// option: EFUSE.BODLEVEL = 5
// This part's detector does what its fuse says, in every mode: no program could stop it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(INT0_vect)

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    // clean: brown-out-always-on BOD
    for (;;) {
        sleep_mode();
    }
}
