// device: stm32l073xx
// flags: -DSTM32L073xx
// Both settings are written before the power controller has its clock: they are lost.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void prepare(void)
{
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_FWU;
}

int main(void)
{
    prepare();
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // finding: full-power-regulator VREG proven
        // finding@-1: full-power-regulator VREFINT proven
    }
}
