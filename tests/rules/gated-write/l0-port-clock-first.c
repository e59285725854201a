// device: stm32l053xx
// flags: -DSTM32L053xx
// A table of ports, each given its clock before it is set up.
#include "stm32l0xx.h"

static const struct {
    GPIO_TypeDef *port;
    uint32_t gate;
    uint32_t modes;
} ports[] = {
    {GPIOA, RCC_IOPENR_IOPAEN, 0xEBFFFFFF},
    {GPIOB, RCC_IOPENR_IOPBEN, 0x55555555},
    {GPIOC, RCC_IOPENR_IOPCEN, 0xFFFFFFFF},
};

int main(void)
{
    for (uint32_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        RCC->IOPENR |= ports[i].gate;
        ports[i].port->MODER = ports[i].modes;
        ports[i].port->ODR = 0;
    }
    for (;;) {
        __WFI();
    }
}
