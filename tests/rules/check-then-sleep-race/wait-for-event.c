// device: layout32
// The handler leaves its event behind, so that the next wait does not sleep.
#include "../../arm-layout/firmware/part.h"

static volatile uint32_t pressed;

void EXTI_IRQHandler(void)
{
    EXTI->PR = 1u << 3;
    pressed = 1;
}

int main(void)
{
    IOPENR = IOPENR_A;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    for (;;) {
        while (!pressed)
            __asm__ volatile("wfe");
        pressed = 0;
        GPIOA->BSRR = 1;
    }
}
