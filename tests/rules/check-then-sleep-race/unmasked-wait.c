// device: layout32
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
        if (!pressed)
            wait_for_interrupt(); // finding: check-then-sleep-race pressed proven
        pressed = 0;
        GPIOA->BSRR = 1;
    }
}
