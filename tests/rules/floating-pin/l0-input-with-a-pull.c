// device: stm32l053xx
// A pull holds it.
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
    RCC->IOPENR |= RCC_IOPENR_IOPCEN;
    RCC->IOPENR |= RCC_IOPENR_IOPAEN;
    GPIOA->MODER |= 3u << 2 * 4;
    GPIOC->PUPDR |= 2u << 2 * 6; // clean: floating-pin PC6
    GPIOC->MODER &= ~(3u << 2 * 6);
    for (;;)
        __WFI();
}
