// device: stm32l053xx
// flags: -DSTM32L053xx
// Pins are analog from reset on, but for PA4 and the debug port: only inputs must be pulled or driven.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->PUPDR |= 1u;
    GPIOA->MODER = (GPIOA->MODER & ~3u) | 3u << (2 * 4);
    EXTI->FTSR = 1;
    EXTI->IMR = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // clean: floating-pin PA0 PA1 PA4 PB3 PC13
    }
}
