#include "drive.h"

#include <avr/io.h>
#include <util/delay.h>

void drive_init(void)
{
    CLK.CTRL = CLK_SCLKSEL_RC32M_gc; // finding: locked-write CLK.CTRL proven
    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_RTC_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPF = PR_TWI_bm | PR_USART1_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm; // finding: peripheral-clock-left-on USARTF0 proven
}

void drive_step(void)
{
    PORTC.OUTTGL = PIN0_bm;
    _delay_ms(2); // finding: busy-wait-delay drive_step() proven
    PORTC.OUTTGL = PIN0_bm;
}
