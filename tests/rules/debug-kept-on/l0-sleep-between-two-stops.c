// device: stm32l073xx
// flags: -DSTM32L073xx
// The bit counts where the light mode is in use, not in stop.
#include "stm32l0xx.h"

#define DBG_SLEEP 1u

void EXTI0_1_IRQHandler(void)
{
    EXTI->PR = 1;
}

static void rest(uint32_t depth)
{
    SCB->SCR = depth;
    __WFI();
}

int main(void)
{
    RCC->APB2ENR |= RCC_APB2ENR_DBGMCUEN;
    DBGMCU->CR = DBG_SLEEP; // finding: debug-kept-on DBGMCU.CR proven
    EXTI->IMR |= 1;
    NVIC_EnableIRQ(EXTI0_1_IRQn);
    for (;;) {
        rest(0);
        rest(SCB_SCR_SLEEPDEEP_Msk);
    }
}
