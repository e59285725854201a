// device: stm32l053xx
// flags: -DSTM32L053xx
// With this bit an interrupt that comes up, masked though it is, makes the event that WFE waits for.
#include "stm32l0xx.h"

static volatile uint8_t is_open;

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
    is_open = 1;
}

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_IOPAEN;
    GPIOA->MODER &= ~3u;
    EXTI->FTSR = 1;
    EXTI->IMR = 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk | SCB_SCR_SEVONPEND_Msk;
    for (;;) {
        __disable_irq();
        while (!is_open) {
            __WFE(); // clean: no-wake-source SLEEP
            __enable_irq();
            __disable_irq();
        }
        is_open = 0;
        __enable_irq();
    }
}
