#include "parking.h"

#include <avr/io.h>

void parking_init(void)
{
    PORTA.DIR = 0xFF;
    PORTB.DIR = 0x0F;
    PORTC.DIR = 0xFF;
    PORTD.DIR = 0xFF;
    PORTE.DIR = 0x0F;
    PORTR.DIR = 0x03;

    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_RTC_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART0_bm | PR_HIRES_bm | PR_TC0_bm;
}
