// device: stm32g071xx
// At 2 MHz the low-power regulator would do in sleep.
#include "../../families/stm32g0/include/stm32g0xx.h"

void TIM14_IRQHandler(void) { TIM14->SR = ~TIM_SR_UIF; }

int main(void)
{
    RCC->APBENR2 |= RCC_APBENR2_TIM14EN;
    TIM14->ARR = 19999;
    TIM14->DIER = TIM_DIER_UIE;
    TIM14->CR1 = TIM_CR1_CEN;
    NVIC_EnableIRQ(TIM14_IRQn);
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    RCC->CR |= 3u << RCC_CR_HSIDIV_Pos;
    PWR->CR1 = (PWR->CR1 & ~PWR_CR1_VOS) | PWR_CR1_VOS_1;
    for (;;)
        __WFI(); // finding: full-power-regulator VREG proven
}
