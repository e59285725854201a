// device: stm32l073xx
// flags: -DSTM32L073xx
// The debugger is kept in the sleep mode, and the program stops the part.
#include "stm32l0xx.h"

#define DBG_SLEEP 1u

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

int main(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_DBGMCUEN;
    DBGMCU->CR = DBG_SLEEP;
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    for (;;) {
        __WFI(); // clean: debug-kept-on DBGMCU.CR
    }
}
