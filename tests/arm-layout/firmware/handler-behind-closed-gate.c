// A handler writes to a block whose clock main has switched off: the write does not arrive.
#include "part.h"

void EXTI_IRQHandler(void)
{
    EXTI->PR = 1;
    GPIOB->ODR = 0xFF;
    TIM2->DIER = 1;
    GPIOA->ODR |= 1;
}

int main(void)
{
    IOPENR = IOPENR_A | IOPENR_B;
    GPIOB->ODR = 0x0F;
    GPIOA->ODR = 0;
    IOPENR &= ~IOPENR_B;
    EXTI->IMR = 1;
    NVIC_ISER = 1u << IRQ_EXTI;
    SCB_SCR = SCR_SLEEPDEEP;
    wait_for_interrupt(); // state: GPIOB_ODR = 0x0F, TIM2_DIER = 0, GPIOA_ODR = 0b?
    interrupts_off();
    IOPENR |= IOPENR_B;
    GPIOB->ODR = 0;
    wait_for_interrupt(); // state: GPIOB_ODR = 0, GPIOA_ODR = 1
    interrupts_on();
    for (;;)
        wait_for_interrupt(); // state: GPIOB_ODR = 0b????????, TIM2_DIER = 0
}
