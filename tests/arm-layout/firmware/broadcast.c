// Set-and-reset registers, whole words, halves and bytes, and one loop over several ports.
#include "part.h"

int main(void)
{
    port_registers *const ports[] = {GPIOA, GPIOB};

    IOPENR = IOPENR_A | IOPENR_B;
    for (unsigned i = 0; i < sizeof ports / sizeof *ports; i++) {
        ports[i]->ODR = 0;
        ports[i]->BSRR = 0x000200F0u;
        ports[i]->BSRR = 0x00300000u << i;
        ports[i]->BRR = 0x80u;
    }
    *(volatile uint16_t *)&GPIOA->MODER = 0x5555;
    ((volatile uint8_t *)&GPIOA->MODER)[3] = 0x2A;
    *(volatile uint16_t *)((uintptr_t)&GPIOB->MODER + 2) = 0;
    for (;;)
        wait_for_interrupt(); // state: GPIOA_ODR = 0x40, GPIOB_ODR = 0x10, GPIOA_MODER = 0x2AFF5555, GPIOB_MODER = 0x0000FFFF
}
