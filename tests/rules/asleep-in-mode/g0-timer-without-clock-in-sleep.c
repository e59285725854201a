// device: stm32g071xx
// The gate for sleep takes the timer's clock away.
#include "../../families/stm32g0/include/stm32g0xx.h"

void TIM3_IRQHandler(void) { TIM3->SR = ~TIM_SR_UIF; }

int main(void)
{
    RCC->APBENR1 |= RCC_APBENR1_TIM3EN;
    TIM3->DIER = TIM_DIER_UIE;
    TIM3->CR1 = TIM_CR1_CEN; // finding: asleep-in-mode TIM3 proven
    NVIC_EnableIRQ(TIM3_IRQn);
    RCC->APBSMENR1 &= ~RCC_APBSMENR1_TIM3SMEN;
    for (;;)
        __WFI();
}
