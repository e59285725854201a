// Three depths in one image: sleep, stop, and standby, which nothing of the program outlives.
#include "part.h"

void EXTI_IRQHandler(void) { EXTI->PR = 2; }
void TIM2_IRQHandler(void) { TIM2->SR = 0; }

static void rest(int is_deep)
{
    if (is_deep)
        SCB_SCR |= SCR_SLEEPDEEP;
    else
        SCB_SCR &= ~SCR_SLEEPDEEP;
    wait_for_interrupt(); // state: SCB_SCR.SLEEPDEEP = 0b?
}

int main(void)
{
    APBENR = APBENR_TIM2 | APBENR_PWR;
    EXTI->IMR = 2;
    TIM2->DIER = 1;
    NVIC_ISER = 1u << IRQ_TIM2 | 1u << IRQ_EXTI;
    rest(0);
    TIM2->DIER = 0;
    rest(1);
    PWR_CR |= 2;
    wait_for_interrupt(); // state: PWR_CR = 2, SCB_SCR.SLEEPDEEP = 1, TIM2_DIER = 0, RCC_APBENR = 0x10000001
    for (;;)
        wait_for_interrupt(); // no point here
}
