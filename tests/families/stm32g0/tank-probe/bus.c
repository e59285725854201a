#include "probe.h"

#include "stm32g0xx.h"

#define QUESTION '?'
#define CRYSTAL_AT_9600 874u /* 256 times 32768 Hz over 9600 baud */

static volatile uint8_t is_asked;
static volatile uint8_t is_sent;

void USART3_4_LPUART1_IRQHandler(void)
{
    if (LPUART1->ISR & USART_ISR_RXNE_RXFNE)
        is_asked = LPUART1->RDR == QUESTION;
    if (LPUART1->ISR & USART_ISR_TC) {
        LPUART1->ICR = USART_ICR_TCCF;
        is_sent = 1;
    }
}

// The line listens all the time, on the crystal, and so ends stop by a byte.
void bus_start(void)
{
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    while (!(RCC->BDCR & RCC_BDCR_LSERDY))
        ;
    RCC->CCIPR |= 3u << RCC_CCIPR_LPUART1SEL_Pos;
    RCC->APBENR1 |= RCC_APBENR1_LPUART1EN;
    LPUART1->BRR = CRYSTAL_AT_9600;
    LPUART1->CR1 = USART_CR1_UESM | USART_CR1_RE | USART_CR1_TE | USART_CR1_RXNEIE_RXFNEIE | USART_CR1_TCIE | USART_CR1_UE;
    NVIC_EnableIRQ(USART3_4_LPUART1_IRQn);
}

int bus_asks(void)
{
    int was = is_asked;

    is_asked = 0;
    return was;
}

static void send(uint8_t byte)
{
    is_sent = 0;
    LPUART1->TDR = byte;
    __disable_irq();
    while (!is_sent) {
        power_rest();
        __enable_irq();
        __disable_irq();
    }
    __enable_irq();
}

void bus_answer(uint16_t level)
{
    send((uint8_t)(level >> 8));
    send((uint8_t)level);
}
