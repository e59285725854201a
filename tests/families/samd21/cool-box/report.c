#include "report.h"

#include "samd21.h"

#define LINE 18u /* PA18 talks, pad 2 of SERCOM1 */
#define FUNCTION_SERIAL 2u
#define BAUD_9600 55470u /* of 1 MHz */

void report_init(void)
{
    PORT->Group[0].OUTSET.reg = 1ul << LINE;
    PORT->Group[0].DIRSET.reg = 1ul << LINE;
    PORT->Group[0].PMUX[LINE / 2].bit.PMUXE = FUNCTION_SERIAL;
    GCLK->CLKCTRL.reg = GCLK_CLKCTRL_ID_SERCOM1_CORE | GCLK_CLKCTRL_GEN(0) | GCLK_CLKCTRL_CLKEN;
}

static volatile uint8_t bytes_left;
static volatile uint8_t low_byte;
static volatile uint8_t is_sent;

// Each byte that has left is told; the second one ends the report.
void SERCOM1_Handler(void)
{
    SERCOM1->USART.INTFLAG.reg = SERCOM_USART_INTFLAG_TXC;
    if (bytes_left > 0) {
        bytes_left = 0;
        SERCOM1->USART.DATA.reg = low_byte;
    } else {
        is_sent = 1;
    }
}

static void line_open(void)
{
    PM->APBCMASK.bit.SERCOM1_ = 1;
    SERCOM1->USART.CTRLA.reg = SERCOM_USART_CTRLA_SWRST;
    while (SERCOM1->USART.SYNCBUSY.bit.SWRST)
        ;
    SERCOM1->USART.CTRLA.reg = SERCOM_USART_CTRLA_MODE(1) | SERCOM_USART_CTRLA_DORD | SERCOM_USART_CTRLA_TXPO(1);
    SERCOM1->USART.CTRLB.reg = SERCOM_USART_CTRLB_TXEN;
    SERCOM1->USART.BAUD.reg = BAUD_9600;
    SERCOM1->USART.CTRLA.reg |= SERCOM_USART_CTRLA_ENABLE;
    while (SERCOM1->USART.SYNCBUSY.bit.ENABLE)
        ;
    PORT->Group[0].PINCFG[LINE].bit.PMUXEN = 1;
    NVIC_EnableIRQ(SERCOM1_IRQn);
}

static void line_close(void)
{
    NVIC_DisableIRQ(SERCOM1_IRQn);
    PORT->Group[0].PINCFG[LINE].bit.PMUXEN = 0;
    SERCOM1->USART.CTRLA.bit.ENABLE = 0;
    while (SERCOM1->USART.SYNCBUSY.bit.ENABLE)
        ;
    PM->APBCMASK.bit.SERCOM1_ = 0;
}

// The line is up for two bytes only, and the part idles meanwhile; then the pin keeps the line high.
void report_level(uint16_t level)
{
    line_open();
    low_byte = (uint8_t)level;
    bytes_left = 1;
    is_sent = 0;
    SERCOM1->USART.DATA.reg = (uint8_t)(level >> 8);
    SERCOM1->USART.INTENSET.reg = SERCOM_USART_INTENSET_TXC;
    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk;
    PM->SLEEP.reg = 2;
    __disable_irq();
    while (!is_sent) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    line_close();
}
