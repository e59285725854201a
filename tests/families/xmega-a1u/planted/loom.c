#include "loom.h"

#include <avr/io.h>

void loom_init(void)
{
    PORTA.DIRSET = 0xFF;
    PORTB.DIRSET = 0xFF;
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xFF;
    PORTE.DIRSET = 0xFF;
    PORTF.DIRSET = 0xFF;
    PORTH.DIRSET = 0xFF;
    PORTJ.DIRSET = 0xFF;
    PORTK.DIRSET = 0xBF;
    PORTQ.DIRSET = 0xFF;
    PORTR.DIRSET = 0xFF;
    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_EBI_bm | PR_RTC_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm | PR_ADC_bm; // finding: peripheral-clock-left-on ACB proven
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPF = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    USARTC0.CTRLB = USART_TXEN_bm; // finding: gated-write USARTC0.CTRLB proven
}

void loom_show(uint16_t shots)
{
    PORTH.OUT = (uint8_t)shots;
    PORTJ.OUT = (uint8_t)(shots >> 8);
}
