// device: atxmega64d3
// The first generation has no other pin to choose; the output bit of the port counts here, too.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_LEVEL_gc;
    PORTD.INT0MASK = 1 << 2;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    PORTE.DIRSET = 1 << 7;
    PORTCFG.CLKEVOUT = PORTCFG_CLKOUT_PE7_gc; // finding: clock-output-on CLKOUT PE7 proven note
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();
    for (;;) {
        sleep_mode();
    }
}
