#include "thermistor.h"

#include "board.h"
#include "saml21.h"

#define FEED 5u /* PA05 feeds the divider, whose middle is on PA04 */
#define MIDDLE 4u
#define CHANNEL 4u
#define FUNCTION_ANALOG 1u
#define CHANNEL_OF_CONVERTER 30u

static volatile uint8_t is_done;
static volatile uint16_t result;

// To read the result takes the flag back.
void ADC_Handler(void)
{
    result = ADC->RESULT.reg;
    is_done = 1;
}

static void converter_wait(void)
{
    while (ADC->SYNCBUSY.reg)
        ;
}

void thermistor_init(void)
{
    PORT->Group[0].OUTCLR.reg = 1ul << FEED;
    PORT->Group[0].DIRSET.reg = 1ul << FEED;
    PORT->Group[0].PMUX[MIDDLE / 2].bit.PMUXE = FUNCTION_ANALOG;
    PORT->Group[0].PINCFG[MIDDLE].reg = PORT_PINCFG_PMUXEN;
    GCLK->PCHCTRL[CHANNEL_OF_CONVERTER].reg = GCLK_PCHCTRL_GEN(0) | GCLK_PCHCTRL_CHEN;
    NVIC_EnableIRQ(ADC_IRQn);
}

uint16_t thermistor_read(void)
{
    PORT->Group[0].OUTSET.reg = 1ul << FEED;
    MCLK->APBDMASK.reg |= MCLK_APBDMASK_ADC;
    ADC->CTRLB.reg = ADC_CTRLB_PRESCALER(2);
    ADC->INPUTCTRL.reg = ADC_INPUTCTRL_MUXPOS(CHANNEL) | ADC_INPUTCTRL_MUXNEG(0x18);
    converter_wait();
    ADC->CTRLA.bit.ENABLE = 1;
    converter_wait();
    is_done = 0;
    ADC->INTENSET.reg = ADC_INTENSET_RESRDY;
    ADC->SWTRIG.bit.START = 1;

    board_idle();
    __disable_irq();
    while (!is_done) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    board_stand_by();

    ADC->INTENCLR.reg = ADC_INTENCLR_RESRDY;
    ADC->CTRLA.bit.ENABLE = 0;
    converter_wait();
    MCLK->APBDMASK.reg &= ~MCLK_APBDMASK_ADC;
    PORT->Group[0].OUTCLR.reg = 1ul << FEED;
    return result;
}
