#include "wiring.h"

#include <avr/io.h>

void wiring_init(void)
{
    PORTA.DIR = 0xFF;
    PORTC.DIR = 0xFF;
    PORTD.DIR = 0xF7;
    PORTR.DIR = 0x03;

    PR.PRGEN = PR_XCL_bm | PR_EVSYS_bm | PR_EDMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC5_bm | PR_TC4_bm;
    PR.PRPD = PR_USART0_bm | PR_TC5_bm;
}
