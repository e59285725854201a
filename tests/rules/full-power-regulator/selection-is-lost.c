// device: layout32
// The write comes behind a closed gate and has no effect.
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; }

int main(void)
{
    APBENR |= APBENR_PWR;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    APBENR &= ~APBENR_PWR;
    PWR_CR |= PWR_LPSDSR;
    SCB_SCR |= SCR_SLEEPDEEP;
    for (;;) {
        wait_for_interrupt(); // finding: full-power-regulator main proven
    }
}
