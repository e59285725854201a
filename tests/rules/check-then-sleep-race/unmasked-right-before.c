// device: layout32
// This core shields no instruction: a pending interrupt comes before the wait.
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
        if (!pressed) {
            interrupts_on();
            wait_for_interrupt(); // finding: check-then-sleep-race pressed proven
        }
        pressed = 0;
        interrupts_on();
        GPIOA->BSRR = 1;
    }
}
