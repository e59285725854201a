// device: stm32l053xx
// An event line ends WFE.
#include "../../families/stm32l0/include/stm32l0xx.h"

int main(void)
{
    EXTI->RTSR |= 1;
    EXTI->EMR |= 1;
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_LPSDSR | PWR_CR_ULP;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    for (;;)
        __WFE(); // clean: no-wake-source SLEEP
}
