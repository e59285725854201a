// device: layout32
// The serial port is on, but its clock does not go on in the stop mode: it needs nothing there.
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; }

int main(void)
{
    APBENR |= APBENR_PWR;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    LPUART_CR1 = LPUART_UE;
    SCB_SCR |= SCR_SLEEPDEEP;
    for (;;) {
        wait_for_interrupt(); // finding: full-power-regulator main proven
    }
}
