// device: layout32
// The oscillator stops with the mode: nothing needs the full setting.
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; }

int main(void)
{
    APBENR |= APBENR_PWR;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    RCC_CR = RCC_FASTON;
    SCB_SCR |= SCR_SLEEPDEEP;
    for (;;) {
        wait_for_interrupt(); // finding: full-power-regulator main proven
    }
}
