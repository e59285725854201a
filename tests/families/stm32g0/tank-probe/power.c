#include "probe.h"

#include "stm32g0xx.h"

#define TWO_MEGAHERTZ 3u

// All of it at 2 MHz, which the low-power regulator carries. The supply is looked at now and then while in stop.
void power_prepare(void)
{
    RCC->CR = (RCC->CR & ~RCC_CR_HSIDIV) | TWO_MEGAHERTZ << RCC_CR_HSIDIV_Pos;
    RCC->APBENR1 |= RCC_APBENR1_PWREN;
    PWR->CR1 = (PWR->CR1 & ~PWR_CR1_VOS) | PWR_CR1_VOS_1;
    PWR->CR1 |= PWR_CR1_LPR | PWR_CR1_LPMS_0 | PWR_CR1_FPD_STOP;
    PWR->CR3 |= PWR_CR3_ENB_ULP;
}

void power_rest(void)
{
    SCB->SCR |= SCB_SCR_SLEEPDEEP_Msk;
    __WFI();
}

void power_doze(void)
{
    SCB->SCR &= ~SCB_SCR_SLEEPDEEP_Msk;
    __WFI();
}
