// device: layout32
// From the first wake-up on the clocks run through every sleep.
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; DBG_CR |= DBG_STOP; /* finding: debug-kept-on DBG_CR proven */ }

int main(void)
{
    APBENR |= APBENR_PWR;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    SCB_SCR |= SCR_SLEEPDEEP;
    for (;;) {
        wait_for_interrupt();
    }
}
