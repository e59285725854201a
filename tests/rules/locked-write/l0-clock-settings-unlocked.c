// device: stm32l053xx
// flags: -DSTM32L053xx
// Two locks, one behind the other: the backup domain's bit, and the two keys of the clock.
#include "stm32l0xx.h"

static void unlock(void)
{
    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
}

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_DBP;
    RCC->CSR |= RCC_CSR_LSEON | RCC_CSR_RTCSEL_LSE | RCC_CSR_RTCEN;
    unlock();
    RTC->WUTR = 59;
    RTC->CR |= RTC_CR_WUTIE | RTC_CR_WUTE;
    RTC->WPR = 0xFF;
    for (;;) {
        __WFI();
    }
}
