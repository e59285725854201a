// device: layout32
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; }

int main(void)
{
    APBENR |= APBENR_PWR;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    DBG_CR |= DBG_STOP; // finding: debug-kept-on DBG_CR proven warning {{DBG_CR.STOP = 1}}
    SCB_SCR |= SCR_SLEEPDEEP;
    for (;;) {
        wait_for_interrupt();
    }
}
