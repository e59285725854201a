// device: stm32l053xx
// The converter's analog part draws in stop, its clock stopped.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    RCC->APB2ENR = RCC_APB2ENR_ADCEN;
    ADC1->CR = ADC_CR_ADEN; // finding: peripheral-on-in-sleep ADC1 proven
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
