// device: stm32l053xx
// flags: -DSTM32L053xx
// An interrupt that comes after the test stays pending, and ends the wait at once.
#include "stm32l0xx.h"

static volatile uint32_t letters;

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
    letters++;
}

int main(void)
{
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __disable_irq();
        if (!letters)
            __WFI(); // clean: check-then-sleep-race letters
        __enable_irq();
        letters = 0;
    }
}
