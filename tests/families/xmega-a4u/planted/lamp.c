#include "lamp.h"

#include <avr/io.h>
#include <util/delay.h>

void lamp_init(void)
{
    CLK.PSCTRL = CLK_PSADIV_4_gc; // finding: locked-write CLK.PSCTRL proven
    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_RTC_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm;
    PR.PRPD = PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART0_bm | PR_HIRES_bm | PR_TC0_bm;
    TCC0.PER = 999;
    TCC0.CTRLA = TC_CLKSEL_DIV64_gc; // finding: peripheral-on-in-sleep TCC0 proven
}

void lamp_next(void)
{
    PORTA.OUTTGL = 0xFF;
    _delay_ms(25); // finding: busy-wait-delay lamp_next() proven
}
