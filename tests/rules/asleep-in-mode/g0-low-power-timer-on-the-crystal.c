// device: stm32g071xx
// On the crystal it counts on.
#include "../../families/stm32g0/include/stm32g0xx.h"

void TIM6_DAC_LPTIM1_IRQHandler(void) { LPTIM1->ICR = LPTIM_ICR_ARRMCF; }

int main(void)
{
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->APBENR1 |= RCC_APBENR1_LPTIM1EN;
    RCC->CCIPR |= 3u << RCC_CCIPR_LPTIM1SEL_Pos;
    LPTIM1->IER = LPTIM_IER_ARRMIE;
    LPTIM1->CR = LPTIM_CR_ENABLE; // clean: asleep-in-mode LPTIM1
    LPTIM1->ARR = 32767;
    LPTIM1->CR |= LPTIM_CR_CNTSTRT;
    NVIC_EnableIRQ(TIM6_DAC_LPTIM1_IRQn);
    for (;;)
        __WFI();
}
