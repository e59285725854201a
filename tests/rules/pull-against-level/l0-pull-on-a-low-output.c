// device: stm32l053xx
// flags: -DSTM32L053xx
// The pull resistor stays in force on an output: the pin that the program drives low feeds it.
#include "stm32l0xx.h"

#define CHIP_SELECT 4u

static void pull_up(GPIO_TypeDef *port, uint32_t pin)
{
    port->PUPDR |= 1u << (2 * pin); // finding: pull-against-level PA4 proven {{the program itself}}
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    pull_up(GPIOA, CHIP_SELECT);
    GPIOA->BRR = 1u << CHIP_SELECT;
    GPIOA->MODER = (GPIOA->MODER & ~(3u << (2 * CHIP_SELECT))) | 1u << (2 * CHIP_SELECT);
    for (;;) {
        __WFI();
    }
}
