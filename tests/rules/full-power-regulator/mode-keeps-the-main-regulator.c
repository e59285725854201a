// device: layout32
// In the shallow mode the main regulator supplies the core whatever is selected.
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; }

int main(void)
{
    APBENR |= APBENR_PWR;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    SCB_SCR &= ~SCR_SLEEPDEEP;
    for (;;) {
        wait_for_interrupt();
    }
}
