#include "weir.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint8_t was_called;

ISR(PORTF_INT0_vect)
{
    was_called = 1;
}

void pins_prepare(void)
{
    /* All pins of a port take what is written for one. */
    PORTA.DIRSET = (uint8_t)~(1 << LEVEL_PIN);
    PORTA.PIN4CTRL = PORT_ISC_INPUT_DISABLE_gc;
    PORTB.DIRSET = 0xFF;
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xFF;
    PORTF.DIRSET = (uint8_t)~(1 << CALL_PIN);
    PORTCFG.MPCMASK = 0xFF;
    PORTE.PIN0CTRL = PORT_OPC_PULLUP_gc;
    PORTE.OUTSET = 1 << 3;
    PORTE.DIRSET = 1 << 3;
    PORTR.DIRSET = 0x03;
    PORTF.PIN3CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_LEVEL_gc;
    PORTF.INT0MASK = 1 << CALL_PIN;
    PORTF.INTCTRL = PORT_INT0LVL_LO_gc;

    PR.PRGEN = PR_EVSYS_bm;
    PR.PRPA = PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_USART0_bm | PR_SPI_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART0_bm | PR_SPI_bm | PR_TC0_bm;
    PR.PRPF = PR_TC0_bm;
}

uint8_t pins_take_call(void)
{
    uint8_t was = was_called;

    was_called = 0;
    return was;
}
