// device: stm32g071xx
// The end of a conversion can raise an interrupt.
#include "../../families/stm32g0/include/stm32g0xx.h"

static volatile uint32_t total;

int main(void)
{
    RCC->APBENR2 |= RCC_APBENR2_ADCEN;
    ADC1->CR = ADC_CR_ADVREGEN;
    ADC1->CR |= ADC_CR_ADEN;
    for (;;) {
        ADC1->CR |= ADC_CR_ADSTART;
        while (!(ADC1->ISR & ADC_ISR_EOC)) // finding: polling-wait ADC1.ISR
            ;
        total += ADC1->DR;
    }
}
