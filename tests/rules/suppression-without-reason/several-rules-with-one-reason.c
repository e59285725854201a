// device: stm32l053xx
// flags: -DSTM32L053xx
// rules: superloop-without-sleep, polling-wait, suppression-without-reason, unused-suppression
#include "stm32l0xx.h"

int main(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_ADCEN;
    ADC1->CR |= ADC_CR_ADEN;
    // powerlint: allow superloop-without-sleep polling-wait (a bench set, it runs from the mains)
    for (;;) while (!(ADC1->ISR & ADC_ISR_EOC)) ;
}
