// device: stm32l053xx
// An output keeps the pull that it had as an input.
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
    RCC->IOPENR |= RCC_IOPENR_IOPBEN;
    GPIOB->PUPDR |= 1u << 2 * 4; // finding: pull-against-level PB4 proven
    GPIOB->MODER = (GPIOB->MODER & ~(3u << 2 * 4)) | 1u << 2 * 4;
    for (;;)
        __WFI();
}
