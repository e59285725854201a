// device: stm32l476xx
// The debugger's bit keeps clocks on in stop 2.
#include "../../families/stm32l4/include/stm32l4xx.h"

void EXTI0_IRQHandler(void) { EXTI->PR1 = 1; }

int main(void)
{
    EXTI->RTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_IRQn);
    DBGMCU->CR |= DBGMCU_CR_DBG_STOP; // finding: debug-kept-on DBGMCU.CR proven
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
