// device: stm32l053xx
// flags: -DSTM32L053xx
// Between two bytes the bus pins become inputs, and nothing pulls them.
#include "stm32l0xx.h"

#define BUS ((3u << 12) | (3u << 14))

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void bus_let_go(GPIO_TypeDef *port)
{
    port->MODER &= ~BUS; // finding: floating-pin PB6 PB7 proven
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN | RCC_IOPENR_IOPBEN;
    GPIOA->MODER |= 3u << (2 * 4);
    EXTI->IMR = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        GPIOB->MODER = (GPIOB->MODER & ~BUS) | (1u << 12) | (1u << 14);
        GPIOB->BSRR = 3u << 6;
        bus_let_go(GPIOB);
        __WFI();
    }
}
