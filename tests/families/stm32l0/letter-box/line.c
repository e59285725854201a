#include "driver.h"

#define DIVIDER 55924u /* 256 times 2.097 MHz over 9600 baud */

static volatile uint8_t is_free;

void RNG_LPUART1_IRQHandler(void)
{
    LPUART1->ICR = USART_ICR_TCCF;
    is_free = 1;
}

void line_send(uint8_t byte)
{
    RCC->APB1ENR |= RCC_APB1ENR_LPUART1EN;
    LPUART1->BRR = DIVIDER;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_TE | USART_CR1_TCIE;
    is_free = 0;
    LPUART1->TDR = byte;
    NVIC_EnableIRQ(RNG_LPUART1_IRQn);

    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk;
    __disable_irq();
    while (!is_free) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;

    LPUART1->CR1 = 0;
    RCC->APB1ENR &= ~RCC_APB1ENR_LPUART1EN;
}
