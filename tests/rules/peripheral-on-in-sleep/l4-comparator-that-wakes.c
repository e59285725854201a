// device: stm32l476xx
// A comparator whose line wakes the part is wanted; the one beside it is not.
#include "../../families/stm32l4/include/stm32l4xx.h"

void COMP_IRQHandler(void) { EXTI->PR1 = 1u << 21; }

int main(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_SYSCFGEN;
    COMP1->CSR = COMP_CSR_EN | COMP_CSR_PWRMODE; // clean: peripheral-on-in-sleep COMP1
    COMP2->CSR = COMP_CSR_EN | COMP_CSR_PWRMODE; // finding: peripheral-on-in-sleep COMP2 proven
    EXTI->RTSR1 |= 1u << 21;
    EXTI->IMR1 |= 1u << 21;
    NVIC_EnableIRQ(COMP_IRQn);
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
