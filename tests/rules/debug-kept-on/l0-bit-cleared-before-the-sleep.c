// device: stm32l053xx
// Cleared again, the bit costs nothing.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    EXTI->RTSR |= 1;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    RCC->APB2ENR |= RCC_APB2ENR_DBGMCUEN;
    DBGMCU->CR = DBGMCU_CR_DBG_STOP; // clean: debug-kept-on DBGMCU.CR
    DBGMCU->CR = 0;
    for (;;)
        __WFI();
}
