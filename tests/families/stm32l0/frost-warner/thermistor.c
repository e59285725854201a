#include "thermistor.h"

#include "stm32l0xx.h"

#define FEED 2u /* PA2 feeds the divider, whose middle is on PA1 */
#define CHANNEL 1u

static volatile uint8_t is_done;

void ADC1_COMP_IRQHandler(void)
{
    ADC1->ISR = ADC_ISR_EOC;
    is_done = 1;
}

// The converter runs on the bus clock, which goes on in sleep but not in stop.
static void wait_for_conversion(void)
{
    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk;
    __disable_irq();
    while (!is_done) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}

void thermistor_init(void)
{
    GPIOA->BRR = 1u << FEED;
    NVIC_EnableIRQ(ADC1_COMP_IRQn);
    GPIOA->MODER = (GPIOA->MODER & ~(3u << (2 * FEED))) | 1u << (2 * FEED);
}

uint16_t thermistor_read(void)
{
    uint16_t level;

    GPIOA->BSRR = 1u << FEED;
    RCC->APB2ENR |= RCC_APB2ENR_ADCEN;
    ADC1->CHSELR = 1u << CHANNEL;
    ADC1->ISR = ADC_ISR_ADRDY;
    ADC1->CR |= ADC_CR_ADEN;
    while (!(ADC1->ISR & ADC_ISR_ADRDY))
        ;
    ADC1->IER = ADC_IER_EOCIE;
    is_done = 0;
    ADC1->CR |= ADC_CR_ADSTART;
    wait_for_conversion();
    level = (uint16_t)ADC1->DR;
    ADC1->IER = 0;
    ADC1->CR |= ADC_CR_ADDIS;
    while (ADC1->CR & ADC_CR_ADEN)
        ;
    ADC1->CR = 0;
    RCC->APB2ENR &= ~RCC_APB2ENR_ADCEN;
    GPIOA->BRR = 1u << FEED;
    return level;
}
