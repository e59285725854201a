// device: stm32l053xx
// flags: -DSTM32L053xx
// The edge is chosen and its line let through; the interrupt controller was forgotten.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER &= ~3u;
    EXTI->FTSR = 1;
    EXTI->IMR = 1;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // finding: no-wake-source SLEEP proven error {{no interrupt is enabled}}
    }
}
