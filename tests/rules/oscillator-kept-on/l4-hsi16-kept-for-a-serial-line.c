// device: stm32l476xx
// A serial line that wakes by a byte has its clock from the 16 MHz oscillator.
#include "../../families/stm32l4/include/stm32l4xx.h"

void USART2_IRQHandler(void) { (void)USART2->RDR; }

int main(void)
{
    RCC->CR |= RCC_CR_HSION | RCC_CR_HSIKERON; // clean: oscillator-kept-on HSI16
    RCC->APB1ENR1 |= RCC_APB1ENR1_USART2EN;
    RCC->CCIPR |= 2u << RCC_CCIPR_USART2SEL_Pos;
    USART2->BRR = 1667;
    USART2->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE;
    NVIC_EnableIRQ(USART2_IRQn);
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP1;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
