// device: stm32l476xx
// The first low-power timer counts in stop 2 as well.
#include "../../families/stm32l4/include/stm32l4xx.h"

void LPTIM1_IRQHandler(void) { LPTIM1->ICR = LPTIM_ICR_ARRMCF; }

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->APB1ENR1 |= RCC_APB1ENR1_LPTIM1EN;
    RCC->CCIPR |= 3u << RCC_CCIPR_LPTIM1SEL_Pos;
    LPTIM1->IER = LPTIM_IER_ARRMIE;
    LPTIM1->CR = LPTIM_CR_ENABLE;
    LPTIM1->ARR = 32767;
    LPTIM1->CR |= LPTIM_CR_CNTSTRT;
    NVIC_EnableIRQ(LPTIM1_IRQn);
    PWR->CR1 |= PWR_CR1_LPMS_STOP1;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk; // finding: shallow-sleep proven {{stop2}}
    for (;;)
        __WFI();
}
