// device: stm32l053xx
// flags: -DSTM32L053xx
// The helper is right; it is called before the port has its clock.
#include "stm32l0xx.h"

static void make_output(GPIO_TypeDef *port, uint32_t pin)
{
    port->MODER = (port->MODER & ~(3u << (2 * pin))) | 1u << (2 * pin); // finding: gated-write GPIOB.MODER proven
}

int main(void)
{
    make_output(GPIOB, 5); // related: gated-write
    RCC->IOPENR |= RCC_IOPENR_IOPBEN;
    GPIOB->BRR = 1u << 5;
    for (;;) {
        __WFI();
    }
}
