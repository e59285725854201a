// device: stm32l053xx
// flags: -DSTM32L053xx
// rules: gated-write, suppression-without-reason, unused-suppression
#include "stm32l0xx.h"

static void write_early(GPIO_TypeDef *port)
{
    // powerlint: allow gated-write (the test of the gate wants the write to be lost)
    port->ODR = 1;
}

int main(void)
{
    write_early(GPIOB);
    RCC->IOPENR = RCC_IOPENR_IOPBEN;
    for (;;) {
        __WFI();
    }
}
