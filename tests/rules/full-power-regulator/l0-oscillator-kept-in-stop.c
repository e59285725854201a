// device: stm32l053xx
// flags: -DSTM32L053xx
// The 16 MHz oscillator goes on in stop for the serial port, and needs the main regulator.
#include "stm32l0xx.h"

void RNG_LPUART1_IRQHandler(void)
{
    (void)LPUART1->RDR;
}

int main(void)
{
    RCC->CR |= RCC_CR_HSION | RCC_CR_HSIKERON;
    RCC->APB1ENR |= RCC_APB1ENR_PWREN | RCC_APB1ENR_LPUART1EN;
    PWR->CR |= PWR_CR_ULP;
    RCC->CCIPR = RCC_CCIPR_LPUART1SEL_1;
    LPUART1->CR1 = USART_CR1_UESM | USART_CR1_RE | USART_CR1_RXNEIE | USART_CR1_UE;
    NVIC_EnableIRQ(RNG_LPUART1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // clean: full-power-regulator VREG
    }
}
