// device: atxmega128a3u
// option: FUSEBYTE2.BODPD = 2
// One fuse for the deep modes, one for the others, and no register.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTB_INT0_vect)

int main(void)
{
    PORTB.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_BOTHEDGES_gc;
    PORTB.INT0MASK = PIN2_bm;
    PORTB.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();
    // clean: brown-out-always-on BOD
    for (;;) {
        sleep_mode();
    }
}
