#include "dawn.h"

#include <avr/interrupt.h>
#include <avr/io.h>

EMPTY_INTERRUPT(PORTD_INT0_vect)

void dawn_init(void)
{
    PORTD.DIRCLR = PIN2_bm;
    PORTD.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_BOTHEDGES_gc;
    PORTD.INT0MASK = PIN2_bm;
    PORTD.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
}

uint8_t dawn_is_here(void)
{
    return !(PORTD.IN & PIN2_bm);
}
