// device: stm32l476xx
// The gate for sleep takes the timer's clock away.
#include "../../families/stm32l4/include/stm32l4xx.h"

void TIM2_IRQHandler(void) { TIM2->SR = ~TIM_SR_UIF; }

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_TIM2EN | RCC_APB1ENR1_PWREN;
    TIM2->ARR = 999999;
    TIM2->DIER = TIM_DIER_UIE;
    TIM2->CR1 = TIM_CR1_CEN; // finding: asleep-in-mode TIM2 proven
    NVIC_EnableIRQ(TIM2_IRQn);
    RCC->APB1SMENR1 &= ~RCC_APB1SMENR1_TIM2SMEN;
    for (;;)
        __WFI();
}
