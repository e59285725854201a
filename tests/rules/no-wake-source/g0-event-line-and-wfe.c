// device: stm32g071xx
// An event line ends WFE.
#include "../../families/stm32g0/include/stm32g0xx.h"

int main(void)
{
    EXTI->RTSR1 |= 1;
    EXTI->EMR1 |= 1;
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFE(); // clean: no-wake-source SLEEP
}
