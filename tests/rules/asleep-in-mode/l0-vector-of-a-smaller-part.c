// device: stm32l031xx
// The smaller parts name the serial line's vector after it alone; on the crystal it hears in stop.
#include "../../families/stm32l0/include/stm32l0xx.h"

void LPUART1_IRQHandler(void) { (void)LPUART1->RDR; }

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_DBP;
    RCC->CSR |= RCC_CSR_LSEON;
    RCC->CCIPR |= RCC_CCIPR_LPUART1SEL_0 | RCC_CCIPR_LPUART1SEL_1;
    RCC->APB1ENR |= RCC_APB1ENR_LPUART1EN;
    LPUART1->BRR = 874;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE; // clean: asleep-in-mode LPUART1
    NVIC_EnableIRQ(RNG_LPUART1_IRQn);
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
