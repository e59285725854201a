#include "pins.h"

static void park(PORT_t *port, uint8_t pins)
{
    port->OUT = 0;
    port->DIR = pins;
}

void pins_init(void)
{
    park(&PORTA, (uint8_t)~SENSOR_bm);
    PORTA.PIN0CTRL = PORT_ISC_INPUT_DISABLE_gc;
    park(&PORTB, 0xFF);
    park(&PORTC, 0xFF);
    park(&PORTD, 0xFF);
    park(&PORTE, 0x3F);
    park(&PORTF, 0xDF);
    park(&PORTR, 0x03);

    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART0_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPF = PR_USART0_bm | PR_HIRES_bm | PR_TC0_bm;
}
