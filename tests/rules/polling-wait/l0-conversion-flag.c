// device: stm32l053xx
// The end of a conversion can raise an interrupt.
#include "../../families/stm32l0/include/stm32l0xx.h"

static volatile uint32_t total;

int main(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_ADCEN;
    ADC1->CR |= ADC_CR_ADEN;
    for (;;) {
        ADC1->CR |= ADC_CR_ADSTART;
        while (!(ADC1->ISR & ADC_ISR_EOC)) // finding: polling-wait ADC1.ISR
            ;
        total += ADC1->DR;
    }
}
