// device: stm32l073xx
// flags: -DSTM32L073xx
// The power controller is a peripheral with a gate, too.
#include "stm32l0xx.h"

static void choose_low_power_stop(void)
{
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP; // finding: gated-write PWR.CR proven warning {{RCC.APB1ENR.PWREN}}
    PWR->CR &= ~PWR_CR_PDDS;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}

int main(void)
{
    choose_low_power_stop();
    EXTI->EMR = 1u << 17;
    for (;;) {
        __WFE();
    }
}
