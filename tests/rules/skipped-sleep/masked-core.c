// device: layout32
#include "../../arm-layout/firmware/part.h"

static volatile uint32_t sending;

void TIM2_IRQHandler(void)
{
    TIM2->SR = 0;
    sending = 0;
}

void EXTI_IRQHandler(void) { EXTI->PR = 1u << 3; }

int main(void)
{
    IOPENR = IOPENR_A;
    EXTI->IMR = 1u << 3;
    NVIC_ISER = 1u << IRQ_EXTI;
    APBENR |= APBENR_TIM2;
    TIM2->DIER = 1;
    TIM2->CR1 = 1;
    NVIC_ISER = 1u << IRQ_TIM2;
    for (;;) {
        if (!sending) { // finding: skipped-sleep main() proven
            wait_for_interrupt();
            sending = 1;
            GPIOA->BSRR = 1;
        }
    }
}
