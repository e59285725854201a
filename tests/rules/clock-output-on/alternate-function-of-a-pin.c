// device: stm32l053xx
// The clock leaves by the pin only in its alternate function.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER = (GPIOA->MODER & ~(3u << (2 * 8))) | 2u << (2 * 8);
    RCC->CFGR |= 7u << RCC_CFGR_MCOSEL_Pos; // finding: clock-output-on MCO PA8 proven
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
