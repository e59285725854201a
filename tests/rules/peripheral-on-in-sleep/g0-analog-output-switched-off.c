// device: stm32g071xx
// Switched off before the sleep.
#include "../../families/stm32g0/include/stm32g0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->FPR1 = 1; }

int main(void)
{
    EXTI->FTSR1 |= 1;
    EXTI->IMR1 |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    RCC->APBENR1 |= RCC_APBENR1_DAC1EN;
    DAC1->CR = DAC_CR_EN1; // clean: peripheral-on-in-sleep DAC1
    DAC1->DHR12R1 = 2000;
    DAC1->CR = 0;
    RCC->APBENR1 &= ~RCC_APBENR1_DAC1EN;
    for (;;)
        __WFI();
}
