// device: stm32l476xx
// The second low-power timer stands still in stop 2.
#include "../../families/stm32l4/include/stm32l4xx.h"

void LPTIM2_IRQHandler(void) { LPTIM2->ICR = LPTIM_ICR_ARRMCF; }

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->APB1ENR2 |= RCC_APB1ENR2_LPTIM2EN;
    RCC->CCIPR |= 3u << RCC_CCIPR_LPTIM2SEL_Pos;
    LPTIM2->IER = LPTIM_IER_ARRMIE;
    LPTIM2->CR = LPTIM_CR_ENABLE; // finding: asleep-in-mode LPTIM2 proven
    LPTIM2->ARR = 32767;
    LPTIM2->CR |= LPTIM_CR_CNTSTRT;
    NVIC_EnableIRQ(LPTIM2_IRQn);
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
