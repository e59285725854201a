// device: stm32l053xx
// flags: -DSTM32L053xx
// The port's gate stays open, as its pins need it; the serial port's is open for each byte.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void send(uint32_t byte)
{
    RCC->APB1ENR |= RCC_APB1ENR_LPUART1EN;
    LPUART1->BRR = 55924;
    LPUART1->CR1 = USART_CR1_UE | USART_CR1_TE;
    LPUART1->TDR = byte;
    LPUART1->CR1 = 0;
    RCC->APB1ENR &= ~RCC_APB1ENR_LPUART1EN;
}

int main(void)
{
    RCC->IOPENR |= RCC_IOPENR_IOPAEN;
    GPIOA->MODER &= ~3u;
    EXTI->FTSR = 1;
    EXTI->IMR = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;) {
        __WFI(); // clean: peripheral-clock-left-on I2C1 TIM2 SPI1
        send('L');
    }
}
