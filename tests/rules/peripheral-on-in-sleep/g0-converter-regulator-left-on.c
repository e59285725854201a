// device: stm32g071xx
// The converter's regulator draws on after the converter is off.
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
    RCC->APBENR2 |= RCC_APBENR2_ADCEN;
    ADC1->CR = ADC_CR_ADVREGEN; // finding: peripheral-on-in-sleep ADC1 proven
    RCC->APBENR2 &= ~RCC_APBENR2_ADCEN;
    for (;;)
        __WFI();
}
