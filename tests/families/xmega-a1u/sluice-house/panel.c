#include "panel.h"

#include <avr/io.h>

static uint8_t is_open;

static void drive(PORT_t *port)
{
    port->OUTCLR = 0xFF;
    port->DIRSET = 0xFF;
}

void panel_init(void)
{
    drive(&PORTA);
    drive(&PORTB);
    drive(&PORTC);
    drive(&PORTD);
    drive(&PORTE);
    drive(&PORTF);
    drive(&PORTH);
    drive(&PORTJ);
    drive(&PORTQ);
    drive(&PORTR);

    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_EBI_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPF = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
}

void panel_toggle(uint8_t sluice)
{
    is_open ^= (uint8_t)(1 << (sluice & 7));
}

void panel_show(void)
{
    PORTH.OUT = is_open;
}

void panel_dark(void)
{
    PORTH.OUT = 0;
}
