// device: stm32l053xx
// flags: -DSTM32L053xx
#include "stm32l0xx.h"

static volatile uint32_t level;

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void measure(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_ADCEN;
    ADC1->CR |= ADC_CR_ADEN;
    ADC1->CR |= ADC_CR_ADSTART;
    while (!(ADC1->ISR & ADC_ISR_EOC))
        ;
    level = ADC1->DR;
    ADC1->CR |= ADC_CR_ADDIS;
    while (ADC1->CR & ADC_CR_ADEN)
        ;
    RCC->APB2ENR &= ~RCC_APB2ENR_ADCEN;
}

int main(void)
{
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // clean: peripheral-on-in-sleep ADC1
        measure();
    }
}
