// device: layout32
// A masked interrupt ends the wait all the same, and its handler runs afterwards.
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
        interrupts_off();
        if (!pressed)
            wait_for_interrupt(); // clean: check-then-sleep-race pressed
        interrupts_on();
        pressed = 0;
        GPIOA->BSRR = 1;
    }
}
