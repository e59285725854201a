// device: stm32l053xx
// flags: -DSTM32L053xx
// The core goes back to sleep by itself at the return of each handler.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk | SCB_SCR_SLEEPONEXIT_Msk;
    for (;;) {
        __WFI(); // clean: superloop-without-sleep main()
    }
}
