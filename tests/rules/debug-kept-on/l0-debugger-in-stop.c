// device: stm32l053xx
// flags: -DSTM32L053xx
// A start-up helper for the debugger that went into the release.
#include "stm32l0xx.h"

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void keep_debugger(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_DBGMCUEN;
    DBGMCU->CR |= DBGMCU_CR_DBG_STOP; // finding: debug-kept-on DBGMCU.CR proven warning
    RCC->APB2ENR &= ~RCC_APB2ENR_DBGMCUEN;
}

int main(void)
{
    keep_debugger();
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI();
    }
}
