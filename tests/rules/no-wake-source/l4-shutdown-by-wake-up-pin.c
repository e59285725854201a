// device: stm32l476xx
// A wake-up pin ends shutdown.
#include "../../families/stm32l4/include/stm32l4xx.h"

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_SHUTDOWN;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR3 |= PWR_CR3_EWUP2;
    for (;;)
        __WFI(); // clean: no-wake-source SLEEP
}
