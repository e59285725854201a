// The priority mask saved and put back, with inline assembly: waking does not need it clear, handlers do.
#include "part.h"

static volatile uint8_t edges;

void EXTI_IRQHandler(void)
{
    EXTI->PR = 1;
    edges = 1;
    GPIOA->ODR |= 2;
}

static uint32_t enter(void)
{
    uint32_t mask = get_mask();
    interrupts_off();
    return mask;
}

int main(void)
{
    IOPENR = IOPENR_A;
    GPIOA->ODR = 0;
    EXTI->IMR = 1;
    uint32_t mask = enter();
    NVIC_ISER = 1u << IRQ_EXTI;
    GPIOA->ODR |= 1;
    uint32_t inner = enter();
    if (inner == 0)
        GPIOA->ODR |= 0x80;
    set_mask(inner);
    wait_for_interrupt(); // state: GPIOA_ODR = 1, CORE.INTERRUPTS_ON = 0, NVIC_ENABLED = 0x80
    GPIOA->ODR |= 4;
    set_mask(mask);
    GPIOA->ODR |= 8;
    wait_for_interrupt(); // state: GPIOA_ODR = 0b11?1, CORE.INTERRUPTS_ON = 1
    interrupts_off();
    NVIC_ICER = 1u << IRQ_EXTI;
    EXTI->IMR = 0;
    interrupts_on();
    wait_for_interrupt(); // state: GPIOA_ODR = 0b1111, NVIC_ENABLED = 0
    for (;;)
        wait_for_interrupt(); // no point here
}
