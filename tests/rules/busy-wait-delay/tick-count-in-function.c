// device: stm32l053xx
// Milliseconds that a function hands out, from the system tick.
#include "../../families/stm32l0/include/stm32l0xx.h"

static volatile uint32_t milliseconds;

void SysTick_Handler(void)
{
    milliseconds++;
}

static uint32_t now(void)
{
    return milliseconds;
}

static void pause(uint32_t length)
{
    uint32_t start = now();
    while (now() - start < length) // finding: busy-wait-delay pause() {{handler}}
        ;
}

int main(void)
{
    SysTick->LOAD = 2097 - 1;
    SysTick->CTRL = 7;
    for (;;) {
        GPIOA->BSRR = 1;
        pause(30);
        GPIOA->BRR = 1;
        __WFI();
    }
}
