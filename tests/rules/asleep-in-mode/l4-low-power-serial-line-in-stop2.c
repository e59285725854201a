// device: stm32l476xx
// The low-power serial interface takes bytes in stop 2, on the crystal.
#include "../../families/stm32l4/include/stm32l4xx.h"

void LPUART1_IRQHandler(void) { (void)LPUART1->RDR; }

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->CCIPR |= 3u << RCC_CCIPR_LPUART1SEL_Pos;
    RCC->APB1ENR2 |= RCC_APB1ENR2_LPUART1EN;
    LPUART1->BRR = 874;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE; // clean: asleep-in-mode LPUART1
    NVIC_EnableIRQ(LPUART1_IRQn);
    for (;;)
        __WFI();
}
