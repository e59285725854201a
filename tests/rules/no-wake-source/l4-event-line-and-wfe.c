// device: stm32l476xx
// An event line ends WFE.
#include "../../families/stm32l4/include/stm32l4xx.h"

int main(void)
{
    EXTI->RTSR1 |= 1;
    EXTI->EMR1 |= 1;
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFE(); // clean: no-wake-source SLEEP
}
