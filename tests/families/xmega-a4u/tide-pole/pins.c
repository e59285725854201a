#include "pins.h"

#include <avr/io.h>

/* Pulls and drives nothing but what is wired: every other pin is driven low. */
void pins_init(void)
{
    PORTA.DIRSET = (uint8_t)~(1 << PRESSURE_PIN);
    PORTB.DIRSET = 0xFF;
    PORTC.DIRSET = 0xFF;
    PORTD.DIRSET = 0xFF;
    PORTE.DIRSET = 0xFF;
    PORTR.DIRSET = 0xFF;
    PORTA.PIN2CTRL = PORT_ISC_INPUT_DISABLE_gc;

    PR.PRGEN = PR_USB_bm | PR_AES_bm | PR_EVSYS_bm | PR_DMA_bm;
    PR.PRPA = PR_ADC_bm | PR_AC_bm;
    PR.PRPB = PR_DAC_bm;
    PR.PRPC = PR_TWI_bm | PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPD = PR_USART1_bm | PR_USART0_bm | PR_SPI_bm | PR_HIRES_bm | PR_TC1_bm | PR_TC0_bm;
    PR.PRPE = PR_TWI_bm | PR_USART0_bm | PR_HIRES_bm | PR_TC0_bm;
}
