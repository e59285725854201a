// device: stm32g071xx
// A serial line that wakes by a byte has its clock from the 16 MHz oscillator.
#include "../../families/stm32g0/include/stm32g0xx.h"

void USART1_IRQHandler(void) { (void)USART1->RDR; }

int main(void)
{
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    RCC->CR |= RCC_CR_HSIKERON; // clean: oscillator-kept-on HSI16
    RCC->APBENR2 |= RCC_APBENR2_USART1EN;
    RCC->CCIPR |= 2u << RCC_CCIPR_USART1SEL_Pos;
    USART1->BRR = 1667;
    USART1->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE_RXFNEIE;
    NVIC_EnableIRQ(USART1_IRQn);
    for (;;)
        __WFI();
}
