// device: stm32l476xx
// The bit for stop does nothing to a sleep that leaves the clocks on.
#include "../../families/stm32l4/include/stm32l4xx.h"

void TIM2_IRQHandler(void) { TIM2->SR = ~TIM_SR_UIF; }

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_TIM2EN | RCC_APB1ENR1_PWREN;
    TIM2->ARR = 999999;
    TIM2->DIER = TIM_DIER_UIE;
    TIM2->CR1 = TIM_CR1_CEN;
    NVIC_EnableIRQ(TIM2_IRQn);
    DBGMCU->CR |= DBGMCU_CR_DBG_STOP; // clean: debug-kept-on DBGMCU.CR
    for (;;)
        __WFI();
}
