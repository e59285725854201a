// device: layout32
// Full power for the work, low power for the rest, in a helper with a mask.
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; }

static void supply(uint32_t setting) { PWR_CR = (PWR_CR & ~PWR_LPSDSR) | setting; }

int main(void)
{
    APBENR |= APBENR_PWR;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    SCB_SCR |= SCR_SLEEPDEEP;
    for (;;) {
        supply(PWR_LPSDSR);
        wait_for_interrupt(); // clean: full-power-regulator main
        supply(0);
        GPIOA->BSRR = 1;
    }
}
