// device: stm32l476xx
// Stop 2 has the low-power serial interface only.
#include "../../families/stm32l4/include/stm32l4xx.h"

void USART2_IRQHandler(void) { (void)USART2->RDR; }

int main(void)
{
    RCC->CR |= RCC_CR_HSION;
    RCC->APB1ENR1 |= RCC_APB1ENR1_USART2EN;
    RCC->CCIPR |= 2u << RCC_CCIPR_USART2SEL_Pos;
    USART2->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE; // finding: asleep-in-mode USART2 proven
    NVIC_EnableIRQ(USART2_IRQn);
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
