// device: stm32g071xx
// A pull of the power control holds the wake-up pin in standby.
#include "../../families/stm32g0/include/stm32g0xx.h"

int main(void)
{
    RCC->IOPENR = RCC_IOPENR_GPIOAEN;
    GPIOA->PUPDR |= 2; // clean: floating-pin PA0
    GPIOA->MODER &= ~3u;
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_0 | PWR_CR1_LPMS_1;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->PDCRA |= 1;
    PWR->CR3 |= PWR_CR3_EWUP1 | PWR_CR3_APC;
    for (;;)
        __WFI();
}
