// device: stm32l053xx
// A pin's mode is two bits: input floats without a pull, analog does not.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPBEN; // finding: floating-pin PA4 proven
    GPIOB->PUPDR = 1u << (2 * 7);
    GPIOB->MODER &= ~(3u << (2 * 6) | 3u << (2 * 7)); // finding: floating-pin PB6 proven
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
