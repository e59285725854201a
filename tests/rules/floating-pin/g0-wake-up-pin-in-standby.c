// device: stm32g071xx
// A port's own pull is off in standby, so that the wake-up pin floats there.
#include "../../families/stm32g0/include/stm32g0xx.h"

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_GPIOAEN;
    GPIOA->PUPDR |= 2;
    GPIOA->MODER &= ~3u; // finding: floating-pin PA0
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0 | PWR_CR1_LPMS_1;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR3 |= PWR_CR3_EWUP1;
    for (;;)
        __WFI();
}
