// device: stm32l053xx
// A comparator whose line wakes the part is wanted; the one beside it is not.
#include "../../families/stm32l0/include/stm32l0xx.h"

void ADC1_COMP_IRQHandler(void) { EXTI->PR = 1u << 21; }

int main(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_SYSCFGEN;
    SYSCFG->COMP1_CTRL = 1; // clean: peripheral-on-in-sleep COMP1
    SYSCFG->COMP2_CTRL = 1; // finding: peripheral-on-in-sleep COMP2 proven
    EXTI->RTSR |= 1u << 21;
    EXTI->IMR |= 1u << 21;
    NVIC_EnableIRQ(ADC1_COMP_IRQn);
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
