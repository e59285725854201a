#include "link.h"

#include "board.h"
#include "saml22.h"

#define LINE 16u /* PA16 talks, pad 0 of SERCOM1 */
#define FUNCTION_SERIAL 2u
#define CHANNEL_OF_SERIAL 17u
#define BAUD_4800 64277u /* of 4 MHz */

static volatile uint8_t is_sent;

void SERCOM1_Handler(void)
{
    SERCOM1->USART.INTFLAG.reg = SERCOM_USART_INTFLAG_TXC;
    is_sent = 1;
}

void link_init(void)
{
    PORT->Group[0].OUTSET.reg = 1ul << LINE;
    PORT->Group[0].DIRSET.reg = 1ul << LINE;
    PORT->Group[0].PMUX[LINE / 2].bit.PMUXE = FUNCTION_SERIAL;
    GCLK->PCHCTRL[CHANNEL_OF_SERIAL].reg = GCLK_PCHCTRL_GEN(0) | GCLK_PCHCTRL_CHEN;
}

// The line is up for one byte, while the part idles; then the pin keeps it high.
void link_send(uint8_t count)
{
    MCLK->APBCMASK.reg |= MCLK_APBCMASK_SERCOM1;
    SERCOM1->USART.CTRLA.reg = SERCOM_USART_CTRLA_MODE(1);
    SERCOM1->USART.CTRLB.reg = SERCOM_USART_CTRLB_TXEN;
    SERCOM1->USART.BAUD.reg = BAUD_4800;
    SERCOM1->USART.INTENSET.reg = SERCOM_USART_INTENSET_TXC;
    SERCOM1->USART.CTRLA.reg |= SERCOM_USART_CTRLA_ENABLE;
    while (SERCOM1->USART.SYNCBUSY.reg)
        ;
    PORT->Group[0].PINCFG[LINE].bit.PMUXEN = 1;
    NVIC_EnableIRQ(SERCOM1_IRQn);
    is_sent = 0;
    SERCOM1->USART.DATA.reg = count;

    board_idle();
    __disable_irq();
    while (!is_sent) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    board_stand_by();

    NVIC_DisableIRQ(SERCOM1_IRQn);
    PORT->Group[0].PINCFG[LINE].bit.PMUXEN = 0;
    SERCOM1->USART.CTRLA.reg = 0;
    while (SERCOM1->USART.SYNCBUSY.reg)
        ;
    MCLK->APBCMASK.reg &= ~MCLK_APBCMASK_SERCOM1;
}
