// device: layout32
#include "../../arm-layout/firmware/part.h"

void EXTI_IRQHandler(void)
{
    EXTI->PR = 1u << 3;
}

int main(void)
{
    IOPENR = IOPENR_A;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    for (;;) {
        wait_for_interrupt(); // clean: pending-wake EXTI_PR
    }
}
