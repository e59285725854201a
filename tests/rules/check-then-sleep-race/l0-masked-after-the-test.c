// device: stm32l053xx
// flags: -DSTM32L053xx
// The mask comes one statement too late.
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
        if (!letters) {
            __disable_irq();
            __WFI(); // finding: check-then-sleep-race letters proven
            __enable_irq();
        }
        letters = 0;
    }
}
