// device: stm32l053xx
// flags: -DSTM32L053xx
// Lines 4 to 15 share a handler; this one remembers the door and forgets the window.
#include "stm32l0xx.h"

#define DOOR 5u
#define WINDOW 7u

static volatile uint8_t is_open;

void EXTI4_15_IRQHandler(void)
{
    if (EXTI->PR & (1u << DOOR))
        EXTI->PR = 1u << DOOR;
    is_open = 1;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER &= ~((3u << (2 * DOOR)) | (3u << (2 * WINDOW)));
    EXTI->FTSR = (1u << DOOR) | (1u << WINDOW);
    EXTI->IMR = (1u << DOOR) | (1u << WINDOW);
    NVIC_EnableIRQ(EXTI4_15_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // finding: pending-wake EXTI.PR.PIF7 proven error
        // clean: pending-wake EXTI.PR.PIF5
    }
}
