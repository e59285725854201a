// device: stm32l053xx
// flags: -DSTM32L053xx
// The timer's clock in sleep is switched off with those of all others of its bus.
#include "stm32l0xx.h"

void TIM21_IRQHandler(void)
{
    TIM21->SR = ~TIM_SR_UIF;
}

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    RCC->APB2SMENR = 0;
    RCC->APB2ENR |= RCC_APB2ENR_TIM21EN;
    TIM21->DIER = TIM_DIER_UIE;
    TIM21->CR1 = TIM_CR1_CEN; // finding: asleep-in-mode TIM21
    NVIC_EnableIRQ(TIM21_IRQn);
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;) {
        __WFI();
    }
}
