#include "probe.h"

#include "stm32g0xx.h"

#define GAUGE 0u /* PA0 */
#define FEED 1u  /* PA1 */

static volatile uint8_t is_done;

void ADC1_COMP_IRQHandler(void)
{
    ADC1->ISR = ADC_ISR_EOC;
    is_done = 1;
}

uint16_t level_read(void)
{
    uint16_t level;

    GPIOA->BSRR = 1u << FEED;
    RCC->APBENR2 |= RCC_APBENR2_ADCEN;
    ADC1->CR = ADC_CR_ADVREGEN;
    for (volatile unsigned wait = 0; wait < 5; wait++)
        ;
    ADC1->CFGR2 = ADC_CFGR2_CKMODE_1;
    ADC1->CHSELR = 1u << GAUGE;
    ADC1->ISR = ADC_ISR_ADRDY;
    ADC1->CR |= ADC_CR_ADEN;
    while (!(ADC1->ISR & ADC_ISR_ADRDY))
        ;
    ADC1->IER = ADC_IER_EOCIE;
    NVIC_EnableIRQ(ADC1_COMP_IRQn);
    is_done = 0;
    ADC1->CR |= ADC_CR_ADSTART;
    __disable_irq();
    while (!is_done) {
        power_doze();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    NVIC_DisableIRQ(ADC1_COMP_IRQn);
    level = (uint16_t)ADC1->DR;
    ADC1->IER = 0;
    ADC1->CR |= ADC_CR_ADDIS;
    while (ADC1->CR & ADC_CR_ADEN)
        ;
    ADC1->CR = 0;
    RCC->APBENR2 &= ~RCC_APBENR2_ADCEN;
    GPIOA->BRR = 1u << FEED;
    return level;
}
