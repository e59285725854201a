// device: stm32l476xx
// The mode is written before the clock of the power control is on: the part sleeps in stop 0.
#include "../../families/stm32l4/include/stm32l4xx.h"

void EXTI0_IRQHandler(void) { EXTI->PR1 = 1; }

int main(void)
{
    EXTI->RTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_IRQn);
    PWR->CR1 |= PWR_CR1_LPMS_STOP2; // finding: gated-write PWR.CR1 proven
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
