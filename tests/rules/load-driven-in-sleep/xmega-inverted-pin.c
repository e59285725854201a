// device: atxmega32a4u
// board: PC3: { load: "valve", active: high, milliamps: 40 }
// The pin is inverted in its own control register: clearing the output opens the valve.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTC.PIN3CTRL = PORT_INVEN_bm;
    PORTC.OUTSET = PIN3_bm;
    PORTC.DIRSET = PIN3_bm;
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc;
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();
    for (;;) {
        PORTC.OUTCLR = PIN3_bm; // finding: load-driven-in-sleep PC3 proven
        sleep_mode();
    }
}
