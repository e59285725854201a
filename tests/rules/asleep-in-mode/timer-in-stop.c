// device: stm32l053xx
// A timer on the bus clock stands still in stop.
#include "../../families/stm32l0/include/stm32l0xx.h"

void TIM21_IRQHandler(void) { TIM21->SR = ~TIM_SR_UIF; }

int main(void)
{
    RCC->APB2ENR = RCC_APB2ENR_TIM21EN;
    TIM21->ARR = 9999;
    TIM21->DIER = TIM_DIER_UIE;
    TIM21->CR1 = TIM_CR1_CEN; // finding: asleep-in-mode TIM21 proven
    NVIC_EnableIRQ(TIM21_IRQn);
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
