// device: stm32l476xx
// The low-power regulator would carry the sleep at 2 MHz; it must not carry what comes before that, so the fix selects it for the sleep alone.
#include "../../families/stm32l4/include/stm32l4xx.h"

void TIM2_IRQHandler(void) { TIM2->SR = ~TIM_SR_UIF; }

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_TIM2EN | RCC_APB1ENR1_PWREN;
    TIM2->ARR = 999999;
    TIM2->DIER = TIM_DIER_UIE;
    TIM2->CR1 = TIM_CR1_CEN;
    NVIC_EnableIRQ(TIM2_IRQn);
    RCC->CR = (RCC->CR & ~RCC_CR_MSIRANGE) | 5u << RCC_CR_MSIRANGE_Pos | RCC_CR_MSIRGSEL;
    PWR->CR1 = (PWR->CR1 & ~PWR_CR1_VOS) | PWR_CR1_VOS_1;
    for (;;) {
        __WFI(); // finding: full-power-regulator VREG proven
    }
}
