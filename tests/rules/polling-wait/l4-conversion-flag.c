// device: stm32l476xx
// The end of a conversion can raise an interrupt.
#include "../../families/stm32l4/include/stm32l4xx.h"

static volatile uint32_t total;

int main(void)
{
    RCC->AHB2ENR |= RCC_AHB2ENR_ADCEN;
    ADC1->CR = ADC_CR_ADVREGEN;
    ADC1->CR |= ADC_CR_ADEN;
    for (;;) {
        ADC1->CR |= ADC_CR_ADSTART;
        while (!(ADC1->ISR & ADC_ISR_EOC)) // finding: polling-wait ADC1.ISR
            ;
        total += ADC1->DR;
    }
}
