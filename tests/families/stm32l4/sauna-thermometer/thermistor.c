#include "stm32l4xx.h"
#include "thermometer.h"

#define CHANNEL 10u /* PA5 */
#define FEED 6u     /* PA6 */

static volatile uint8_t is_done;

void ADC1_IRQHandler(void)
{
    ADC1->ISR = ADC_ISR_EOC;
    is_done = 1;
}

static uint32_t convert(void)
{
    is_done = 0;
    ADC1->CR |= ADC_CR_ADSTART;
    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk;
    __disable_irq();
    while (!is_done) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    return ADC1->DR;
}

// Out of deep power-down, regulator on, one conversion on the bus clock, and all of it back.
unsigned thermistor_tenths(void)
{
    uint32_t level;

    GPIOA->BSRR = 1u << FEED;
    RCC->AHB2ENR |= RCC_AHB2ENR_ADCEN;
    ADC123_COMMON->CCR = ADC_CCR_CKMODE_0;
    ADC1->CR = 0;
    ADC1->CR = ADC_CR_ADVREGEN;
    for (volatile unsigned wait = 0; wait < 10; wait++)
        ;
    ADC1->ISR = ADC_ISR_ADRDY;
    ADC1->CR |= ADC_CR_ADEN;
    while (!(ADC1->ISR & ADC_ISR_ADRDY))
        ;
    ADC1->SQR1 = CHANNEL << ADC_SQR1_SQ1_Pos;
    ADC1->IER = ADC_IER_EOCIE;
    NVIC_EnableIRQ(ADC1_IRQn);
    level = convert();
    NVIC_DisableIRQ(ADC1_IRQn);
    ADC1->IER = 0;
    ADC1->CR |= ADC_CR_ADDIS;
    while (ADC1->CR & ADC_CR_ADEN)
        ;
    ADC1->CR = ADC_CR_DEEPPWD;
    RCC->AHB2ENR &= ~RCC_AHB2ENR_ADCEN;
    GPIOA->BRR = 1u << FEED;
    return (unsigned)(level * 1100u / 4095u);
}
