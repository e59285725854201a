#include "impeller.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint32_t turns;

ISR(PORTD_INT_vect)
{
    PORTD.INTFLAGS = PIN3_bm;
    turns++;
}

void impeller_init(void)
{
    PORTD.PIN3CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_FALLING_gc;
    PORTD.INTMASK = PIN3_bm;
    PORTD.INTCTRL = PORT_INTLVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
}
