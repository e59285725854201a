// device: stm32l053xx
// A pin's edge ends stop as well.
#include "../../families/stm32l0/include/stm32l0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    EXTI->IMR |= 1; // finding: shallow-sleep proven {{stop}}
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;)
        __WFI();
}
