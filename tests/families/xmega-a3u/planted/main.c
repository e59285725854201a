// device: atxmega256a3u
// flags: -DF_CPU=32000000UL -Wall
// A telescope's drive: a fast timer turns it while a star is followed.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "drive.h"

EMPTY_INTERRUPT(PORTA_INT0_vect)

int main(void)
{
    PORTA.DIRSET = 0xFE;
    PORTB.DIRSET = 0xFF;
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xFF;
    PORTE.DIRSET = 0xFF;
    PORTF.DIRSET = 0xFF;
    PORTR.DIRSET = 0xFF;
    PORTA.PIN0CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_LEVEL_gc;
    PORTA.INT0MASK = PIN0_bm;
    PORTA.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    PORTB.DIRCLR = PIN3_bm; // finding: floating-pin PB3 proven
    PORTCFG.CLKEVOUT = PORTCFG_CLKOUT_PE7_gc; // finding: clock-output-on CLKOUT PE7 proven note
    OSC.CTRL |= OSC_RC32MEN_bm;
    drive_init();
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();

    for (;;) {
        sleep_mode();
        drive_step();
    }
}
