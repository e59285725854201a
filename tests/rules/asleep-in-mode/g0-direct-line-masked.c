// device: stm32g071xx
// The serial line's own interrupt line is masked, so that a byte ends no stop.
#include "../../families/stm32g0/include/stm32g0xx.h"

void EXTI0_1_IRQHandler(void) { EXTI->FPR1 = 1; }
void USART3_4_LPUART1_IRQHandler(void) { (void)LPUART1->RDR; }

int main(void)
{
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->CCIPR |= 3u << RCC_CCIPR_LPUART1SEL_Pos;
    RCC->APBENR1 |= RCC_APBENR1_LPUART1EN;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE_RXFNEIE; // finding: asleep-in-mode LPUART1 proven
    EXTI->IMR1 = 1;
    EXTI->FTSR1 = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    NVIC_EnableIRQ(USART3_4_LPUART1_IRQn);
    for (;;)
        __WFI();
}
