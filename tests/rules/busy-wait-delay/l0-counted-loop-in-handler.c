// device: stm32l053xx
// flags: -DSTM32L053xx
// hertz: 2097000
// A key is debounced by counting in its handler.
#include "stm32l0xx.h"

static void debounce(void)
{
    for (volatile uint32_t i = 0; i < 10000; i++) // finding: busy-wait-delay debounce()
        ;
}

void EXTI0_1_IRQHandler(void)
{
    debounce();
    EXTI->PR = 1;
}

int main(void)
{
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI();
    }
}
