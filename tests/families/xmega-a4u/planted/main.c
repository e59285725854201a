// device: atxmega128a4u
// flags: -DF_CPU=2000000UL -Wall
// A lighthouse model: a timer lets the lamp circle.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "lamp.h"

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTA.DIRSET = 0xFF; // finding: floating-pin PR1 proven
    PORTB.DIRSET = 0xFF;
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xFB;
    PORTE.DIRSET = 0xFF;
    PORTR.DIRSET = 0x01;
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_LEVEL_gc;
    PORTD.INT0MASK = 1 << 2;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    PORTCFG.CLKEVOUT = PORTCFG_CLKOUT_PC7_gc; // finding: clock-output-on CLKOUT PC7 proven
    lamp_init();
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();

    for (;;) {
        sleep_mode();
        lamp_next();
    }
}
