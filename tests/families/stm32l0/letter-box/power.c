#include "driver.h"

void power_prepare_stop(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR = (PWR->CR & ~PWR_CR_PDDS) | PWR_CR_LPSDSR | PWR_CR_ULP | PWR_CR_FWU;
    RCC->APB1ENR &= ~RCC_APB1ENR_PWREN;
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
}
