// device: stm32l053xx
// A thousand system ticks of a millisecond make a second; the counter is wide enough to make it alone.
#include "../../families/stm32l0/include/stm32l0xx.h"

static volatile uint32_t milliseconds;

void SysTick_Handler(void)
{
    milliseconds++;
}

int main(void)
{
    uint32_t last = 0;
    SysTick->LOAD = 2097 - 1; // finding: woken-too-often SysTick proven {{1 s}}
    SysTick->VAL = 0;
    SysTick->CTRL = 7;
    for (;;) {
        if (milliseconds - last >= 1000) {
            last += 1000;
            GPIOA->BSRR = 1;
        }
        __WFI();
    }
}
