// device: stm32l053xx
// flags: -DSTM32L053xx
#include "stm32l0xx.h"

static volatile uint32_t level;

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static uint32_t converted(void)
{
    ADC1->CR |= ADC_CR_ADSTART;
    while (!(ADC1->ISR & ADC_ISR_EOC)) // finding: polling-wait ADC1.ISR proven
        ;
    return ADC1->DR;
}

int main(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_ADCEN;
    ADC1->CR |= ADC_CR_ADEN;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;) {
        __WFI();
        level = converted();
    }
}
