// device: stm32l053xx
// The line's port is written before the clock of the system configuration is on.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    EXTI->RTSR |= 1;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SYSCFG->EXTICR[0] = 1; // finding: gated-write SYSCFG.EXTICR[0] proven
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
