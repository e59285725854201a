// device: stm32l053xx
// flags: -DSTM32L053xx
// hertz: 2097000
// Under 10 ms before the endless loop.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    for (volatile uint32_t i = 0; i < 300; i++)
        ;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI();
    }
}
