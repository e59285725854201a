// device: stm32l053xx
// flags: -DSTM32L053xx
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP | PWR_CR_FWU;
    RCC->APB1ENR &= ~RCC_APB1ENR_PWREN;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // clean: full-power-regulator VREG VREFINT
    }
}
