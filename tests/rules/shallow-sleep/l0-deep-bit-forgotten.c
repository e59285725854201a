// device: stm32l053xx
// flags: -DSTM32L053xx
// The stop mode is prepared in the power controller, and the processor's own bit is left out.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{ // finding@+1: shallow-sleep proven warning {{stop}}
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER &= ~3u;
    EXTI->FTSR = 1;
    EXTI->IMR = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;) {
        __WFI();
    }
}
