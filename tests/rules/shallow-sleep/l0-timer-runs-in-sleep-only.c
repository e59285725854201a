// device: stm32l053xx
// flags: -DSTM32L053xx
#include "stm32l0xx.h"

void TIM2_IRQHandler(void)
{
    TIM2->SR = ~TIM_SR_UIF;
}

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_TIM2EN;
    TIM2->PSC = 2096;
    TIM2->ARR = 999;
    TIM2->DIER = TIM_DIER_UIE;
    TIM2->CR1 = TIM_CR1_CEN;
    NVIC_EnableIRQ(TIM2_IRQn);
    for (;;) {
        __WFI(); // clean: shallow-sleep sleep
    }
}
