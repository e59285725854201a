// device: stm32l053xx
// flags: -DSTM32L053xx
// A list of clocks from an older board: only the port is used.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void clocks_on(void)
{
    RCC->IOPENR |= RCC_IOPENR_IOPAEN;
    RCC->APB1ENR |= RCC_APB1ENR_I2C1EN | RCC_APB1ENR_LPUART1EN; // finding: peripheral-clock-left-on I2C1 LPUART1 proven warning
    RCC->APB2ENR |= RCC_APB2ENR_TIM21EN; // finding: peripheral-clock-left-on TIM21 proven warning
}

int main(void)
{
    clocks_on();
    GPIOA->MODER &= ~3u;
    EXTI->FTSR = 1;
    EXTI->IMR = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;) {
        __WFI(); // clean: peripheral-clock-left-on SPI1
    }
}
