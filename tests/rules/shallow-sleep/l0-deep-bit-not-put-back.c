// device: stm32l053xx
// flags: -DSTM32L053xx
// Sending takes the deep bit away, and nobody sets it again: from the first byte on the part sleeps lightly.
#include "stm32l0xx.h"

static volatile uint32_t letters;
static uint32_t told;

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
    letters++;
}

static void send(uint32_t byte)
{
    RCC->APB1ENR |= RCC_APB1ENR_LPUART1EN;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_TE;
    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk; // finding: shallow-sleep possible note {{stop}}
    LPUART1->TDR = byte;
    LPUART1->CR1 = 0;
    RCC->APB1ENR &= ~RCC_APB1ENR_LPUART1EN;
}

int main(void)
{
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __disable_irq();
        if (told == letters)
            __WFI();
        __enable_irq();
        while (told != letters) {
            told++;
            send('L');
        }
    }
}
