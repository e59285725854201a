#include "beat.h"

#include <avr/io.h>
#include <util/delay.h>

void beat_init(void)
{
    PR.PRGEN = PR_XCL_bm | PR_RTC_bm | PR_EVSYS_bm | PR_EDMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC5_bm | PR_TC4_bm; // finding: peripheral-clock-left-on USARTC0 proven
    PR.PRPD = PR_USART0_bm | PR_TC5_bm;
}

void beat(void)
{
    PORTC.OUTSET = PIN3_bm;
    _delay_ms(2); // finding: busy-wait-delay beat() proven
    PORTC.OUTCLR = PIN3_bm;
}
