// device: stm32l053xx
// flags: -DSTM32L053xx
// The gate is open for as long as there is something to write, on every pass anew.
#include "stm32l0xx.h"

static void line_on(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_LPUART1EN;
    LPUART1->BRR = 55924;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_TE;
}

static void line_off(void)
{
    LPUART1->CR1 = 0;
    RCC->APB1ENR &= ~RCC_APB1ENR_LPUART1EN;
}

int main(void)
{
    RCC->APB1ENR = RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_ULP;
    RCC->APB1ENR = 0;
    for (;;) {
        line_on();
        LPUART1->TDR = 'x';
        line_off();
        __WFI();
    }
}
