// device: atxmega32d4
// flags: -DF_CPU=2000000UL -Wall
// A horn at a quay that sounds when its button is pressed.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "horn.h"

EMPTY_INTERRUPT(PORTD_INT0_vect)

int main(void)
{
    PORTA.DIRSET = 0xFF; // finding: floating-pin PB3 proven
    PORTB.DIRSET = 0x07;
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xFB;
    PORTE.DIRSET = 0x0F;
    PORTR.DIRSET = 0x03;
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_LEVEL_gc;
    PORTD.INT0MASK = 1 << 2;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    PORTCFG.CLKEVOUT = PORTCFG_CLKOUT_PC7_gc; // finding: clock-output-on CLKOUT PC7 proven
    horn_prepare();
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();

    for (;;) {
        sleep_mode();
        horn_sound();
    }
}
