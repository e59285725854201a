// device: stm32l053xx
// The low-power timer on the crystal counts in stop as well.
#include "../../families/stm32l0/include/stm32l0xx.h"

void LPTIM1_IRQHandler(void) { LPTIM1->ICR = LPTIM_ICR_ARRMCF; }

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN; // finding: shallow-sleep proven {{stop}}
    PWR->CR |= PWR_CR_DBP;
    RCC->CSR |= RCC_CSR_LSEON;
    RCC->APB1ENR |= RCC_APB1ENR_LPTIM1EN;
    RCC->CCIPR |= RCC_CCIPR_LPTIM1SEL;
    LPTIM1->IER = LPTIM_IER_ARRMIE;
    LPTIM1->CR = LPTIM_CR_ENABLE;
    LPTIM1->ARR = 32767;
    LPTIM1->CR |= LPTIM_CR_CNTSTRT;
    NVIC_EnableIRQ(LPTIM1_IRQn);
    for (;;)
        __WFI();
}
