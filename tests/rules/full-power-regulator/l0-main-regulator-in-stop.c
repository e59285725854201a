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
    PWR->CR = (PWR->CR & ~PWR_CR_PDDS) | PWR_CR_ULP;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // finding: full-power-regulator VREG proven warning
        // clean: full-power-regulator VREFINT
    }
}
