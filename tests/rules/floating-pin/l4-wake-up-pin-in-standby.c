// device: stm32l476xx
// A port's own pull is off in standby, so that the wake-up pin floats there.
#include "../../families/stm32l4/include/stm32l4xx.h"

int main(void)
{
    RCC->AHB2ENR = RCC_AHB2ENR_GPIOAEN;
    GPIOA->PUPDR |= 2;
    GPIOA->MODER &= ~3u; // finding: floating-pin PA0
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STANDBY;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR3 |= PWR_CR3_EWUP1;
    for (;;)
        __WFI();
}
