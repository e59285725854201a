// device: stm32g071xx
// Sampled in stop.
#include "../../families/stm32g0/include/stm32g0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->FPR1 = 1; }

int main(void)
{
    EXTI->FTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR3 |= PWR_CR3_ENB_ULP;
    for (;;)
        __WFI(); // clean: brown-out-always-on BOR
}
