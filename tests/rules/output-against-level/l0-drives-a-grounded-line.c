// device: stm32l053xx
// flags: -DSTM32L053xx
// board: PB5: { driven: low }
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPBEN;
    GPIOB->MODER = (GPIOB->MODER & ~(3u << 10)) | 1u << 10; // finding: output-against-level PB5 proven error
    GPIOB->BSRR = 1u << 5;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;) {
        __WFI();
    }
}
