// device: stm32l476xx
// Both the clock's flag and the line's stay up: the next sleep ends at once.
#include "../../families/stm32l4/include/stm32l4xx.h"

static volatile uint32_t wakes;

void RTC_WKUP_IRQHandler(void) { wakes++; }

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
        __WFI(); // finding: pending-wake EXTI.PR1.PIF20 proven
}
