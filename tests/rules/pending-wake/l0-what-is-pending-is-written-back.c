// device: stm32l053xx
// flags: -DSTM32L053xx
#include "stm32l0xx.h"

#define LINES ((1u << 0) | (1u << 1))

static volatile uint32_t seen;

void EXTI0_1_IRQHandler(void)
{
    uint32_t pending = EXTI->PR & LINES;

    EXTI->PR = pending;
    seen |= pending;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER &= ~0xFu;
    EXTI->RTSR = LINES;
    EXTI->IMR = LINES;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // clean: pending-wake EXTI.PR.PIF0 EXTI.PR.PIF1
    }
}
