// device: stm32l476xx
// The gate is closed again before the sleep.
#include "../../families/stm32l4/include/stm32l4xx.h"

void EXTI0_IRQHandler(void) { EXTI->PR1 = 1; }

int main(void)
{
    EXTI->RTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_IRQn);
    RCC->APB1ENR2 |= RCC_APB1ENR2_LPUART1EN; // clean: peripheral-clock-left-on LPUART1
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    RCC->APB1ENR2 &= ~RCC_APB1ENR2_LPUART1EN;
    for (;;)
        __WFI();
}
