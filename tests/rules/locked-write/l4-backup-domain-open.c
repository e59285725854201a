// device: stm32l476xx
// DBP opens the backup domain.
#include "../../families/stm32l4/include/stm32l4xx.h"

void EXTI0_IRQHandler(void) { EXTI->PR1 = 1; }

int main(void)
{
    EXTI->RTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_IRQn);
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
