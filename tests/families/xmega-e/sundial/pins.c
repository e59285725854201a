#include "pins.h"

#include <avr/io.h>

void pins_init(void)
{
    PORTA.DIRSET = (uint8_t)~PIN4_bm;
    PORTA.PIN4CTRL = PORT_ISC_INPUT_DISABLE_gc;
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xFF;
    PORTR.DIRSET = 0xFF;

    PR.PRGEN = PR_XCL_bm | PR_EVSYS_bm | PR_EDMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC5_bm | PR_TC4_bm;
    PR.PRPD = PR_USART0_bm | PR_TC5_bm;
}
