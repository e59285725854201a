// device: stm32l053xx
// flags: -DSTM32L053xx
// board: PB6: { pull: up, ohms: 4700 }
#include "stm32l0xx.h"

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN | RCC_IOPENR_IOPBEN;
    GPIOB->MODER &= ~(3u << 12);
    GPIOB->PUPDR = 1u << 12;
    GPIOB->BSRR = 1u << 5;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << 10)) | 1u << 10;
    GPIOB->PUPDR |= 1u << 10;
    for (;;) {
        __WFI(); // clean: pull-against-level PB6
    }
}
