// device: stm32l053xx
// flags: -DSTM32L053xx
// rules: full-power-regulator, suppression-without-reason, unused-suppression
// The low-power setting came later; the comment stayed.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // powerlint: allow full-power-regulator (waking must be fast)
        // finding@-1: unused-suppression full-power-regulator warning {{do}}
    }
}
