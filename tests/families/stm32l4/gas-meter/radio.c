#include "meter.h"

#include "stm32l4xx.h"

#define CRYSTAL_AT_9600 874u /* 256 times 32768 Hz over 9600 baud */

static const char *next;
static volatile uint8_t is_sent;

void LPUART1_IRQHandler(void)
{
    if (*next) {
        LPUART1->TDR = (uint8_t)*next++;
    } else if (LPUART1->CR1 & USART_CR1_TXEIE) {
        LPUART1->CR1 &= ~USART_CR1_TXEIE;
    } else {
        LPUART1->ICR = USART_ICR_TCCF;
        is_sent = 1;
    }
}

// The line runs on the crystal, so that stop 2 does for the time that a telegram takes.
void radio_send(const char *text)
{
    RCC->CCIPR = (RCC->CCIPR & ~(3u << RCC_CCIPR_LPUART1SEL_Pos)) | 3u << RCC_CCIPR_LPUART1SEL_Pos;
    RCC->APB1ENR2 |= RCC_APB1ENR2_LPUART1EN;
    next = text;
    is_sent = 0;
    LPUART1->BRR = CRYSTAL_AT_9600;
    LPUART1->CR1 = USART_CR1_UESM | USART_CR1_TE | USART_CR1_TXEIE | USART_CR1_TCIE | USART_CR1_UE;
    NVIC_EnableIRQ(LPUART1_IRQn);

    __disable_irq();
    while (!is_sent) {
        __WFI();
        __enable_irq();
        __disable_irq();
    }
    NVIC_DisableIRQ(LPUART1_IRQn);
    __enable_irq();
    LPUART1->CR1 = 0;
    RCC->APB1ENR2 &= ~RCC_APB1ENR2_LPUART1EN;
}
