// device: stm32l053xx
// The real-time clock's source lies behind the lock of the backup domain.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    RCC->APB1ENR = RCC_APB1ENR_PWREN;
    RCC->CSR |= RCC_CSR_LSEON; // finding: locked-write RCC.CSR proven
    PWR->CR |= PWR_CR_DBP;
    RCC->CSR |= RCC_CSR_RTCSEL_LSE;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
