// device: stm32l053xx
// A serial line that wakes by a byte has its clock from the 16 MHz oscillator.
#include "../../families/stm32l0/include/stm32l0xx.h"

void RNG_LPUART1_IRQHandler(void) { (void)LPUART1->RDR; }

int main(void)
{
    RCC->CR |= RCC_CR_HSION | RCC_CR_HSIKERON; // clean: oscillator-kept-on HSI16
    RCC->APB1ENR |= RCC_APB1ENR_LPUART1EN;
    RCC->CCIPR |= RCC_CCIPR_LPUART1SEL_1;
    LPUART1->BRR = 426667;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE;
    NVIC_EnableIRQ(RNG_LPUART1_IRQn);
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFI();
}
