// device: stm32l476xx
// A pull of the power control holds the wake-up pin in standby.
#include "../../families/stm32l4/include/stm32l4xx.h"

int main(void)
{
    RCC->AHB2ENR = RCC_AHB2ENR_GPIOAEN;
    GPIOA->PUPDR |= 2; // clean: floating-pin PA0
    GPIOA->MODER &= ~3u;
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STANDBY;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->PDCRA |= 1;
    PWR->CR3 |= PWR_CR3_EWUP1 | PWR_CR3_APC;
    for (;;)
        __WFI();
}
