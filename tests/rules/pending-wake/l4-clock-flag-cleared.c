// device: stm32l476xx
// The handler clears the clock's flag and the line's.
#include "../../families/stm32l4/include/stm32l4xx.h"

void RTC_WKUP_IRQHandler(void)
{
    RTC->ISR = ~RTC_ISR_WUTF;
    EXTI->PR1 = 1u << 20;
}

int main(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_LPMS_STOP2;
    SCB->SCR = SCB_SCR_SLEEPDEEP_Msk;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    RCC->BDCR |= RCC_BDCR_RTCSEL_0 | RCC_BDCR_RTCEN;
    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->CR |= RTC_CR_WUTIE | RTC_CR_WUTE;
    EXTI->IMR1 |= 1u << 20;
    NVIC_EnableIRQ(RTC_WKUP_IRQn);
    for (;;)
        __WFI(); // clean: pending-wake EXTI.PR1.PIF20
}
