// device: stm32g071xx
// An edge ends stop 1 as well.
#include "../../families/stm32g0/include/stm32g0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->FPR1 = 1; }

int main(void)
{
    EXTI->FTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk; // finding: shallow-sleep proven {{stop1}}
    for (;;)
        __WFI();
}
