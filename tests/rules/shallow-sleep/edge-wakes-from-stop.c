// device: stm32l053xx
// A pin's edge ends stop as well.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    EXTI->IMR |= 1; // finding: shallow-sleep proven {{stop}}
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;)
        // From memory, table of wake-up times in the data sheet: on the 2.1 MHz of reset.
        __WFI(); // related: shallow-sleep {{waking from stop takes 7.3 µs (at most 13 µs), from sleep 7 cycles of the CPU}}
}
