// device: stm32l073xx
// flags: -DSTM32L073xx
// A timer's update flag goes by writing it as 0, which nobody does.
#include "stm32l0xx.h"

static volatile uint32_t ticks;

void TIM2_IRQHandler(void)
{
    ticks++;
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
        __WFI(); // finding: pending-wake TIM2.SR.UIF proven error
    }
}
