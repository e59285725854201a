// device: stm32l053xx
// flags: -DSTM32L053xx
// One comment, two rules, no reason for either.
#include "stm32l0xx.h"

static volatile uint32_t now;

void SysTick_Handler(void)
{
    now++;
}

int main(void)
{
    SysTick->LOAD = 2097;
    SysTick->CTRL = SysTick_CTRL_TICKINT_Msk | SysTick_CTRL_ENABLE_Msk;
    // powerlint: allow superloop-without-sleep, busy-wait-delay
    // finding@-1: suppression-without-reason superloop-without-sleep busy-wait-delay warning
    for (;;) {
        now += 2;
    }
}
