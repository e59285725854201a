// Registers on which written ones and zeros act instead of being stored; what is not known to act leaves what fits both ways.
#include "part.h"

#define ACT (*(volatile uint32_t *)0x40030000UL)
#define ACT_BYTE(n) (((volatile uint8_t *)0x40030000UL)[n])
#define ACT_ANY (*(volatile uint16_t *)0x40030004UL)

int main(void)
{
    ACT = 0x33333333u;
    ACT_ANY = 0x5555u;
    EXTI->IMR = 1;
    NVIC_ISER = 1u << IRQ_EXTI;
    wait_for_interrupt(); // state: ACT = 0xC3CF033C, ACT_ANY = 0xFF00
    uint8_t open = EXTI->PR & 1 ? 0xF0 : 0xFF;
    ACT_BYTE(0) = open;
    ACT_BYTE(1) = open;
    ACT_BYTE(2) = open;
    ACT_BYTE(3) = open;
    for (;;)
        wait_for_interrupt(); // state: ACT = 0b1100_????_1100_1111_0000_00??_1100_????
}

void EXTI_IRQHandler(void) { EXTI->PR = 1; }
