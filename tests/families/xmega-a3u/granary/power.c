#include "power.h"

#include <avr/io.h>

#define EVERY_PIN 0xFF

static PORT_t *const ports[] = { &PORTA, &PORTB, &PORTC, &PORTD, &PORTE, &PORTF, &PORTR };

void power_init(void)
{
    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++)
        ports[i]->DIRSET = EVERY_PIN;

    /* The two lines of the bus are pulled up on the board. */
    PORTC.DIRCLR = PIN0_bm | PIN1_bm;

    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm | PR_ADC_bm | PR_AC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPF = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
}
