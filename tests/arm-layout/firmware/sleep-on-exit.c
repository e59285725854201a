// With sleep-on-exit the handlers' way back to sleep does not pass through main: what follows the first sleep never runs.
#include "part.h"

void TIM2_IRQHandler(void)
{
    static uint8_t step;
    TIM2->SR = 0;
    if (step == 0)
        GPIOA->ODR = 1;
    else
        GPIOA->ODR = 3;
    step = 1;
}

int main(void)
{
    IOPENR = IOPENR_A;
    APBENR = APBENR_TIM2;
    GPIOA->ODR = 0;
    TIM2->DIER = 1;
    SCB_SCR = SCR_SLEEPONEXIT;
    NVIC_ISER = 1u << IRQ_TIM2;
    wait_for_interrupt(); // state: GPIOA_ODR = 0b??, TIM2_DIER = 1, SCB_SCR = 2
    GPIOA->ODR |= 0x100;
    for (;;)
        wait_for_interrupt(); // no point here
}
