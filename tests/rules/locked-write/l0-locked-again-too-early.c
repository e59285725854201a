// device: stm32l053xx
// flags: -DSTM32L053xx
// Any other value in the key register closes the lock again.
#include "stm32l0xx.h"

int main(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_DBP;
    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->WUTR = 59;
    RTC->WPR = 0xFF;
    RTC->CR |= RTC_CR_WUTIE | RTC_CR_WUTE; // finding: locked-write RTC.CR proven
    for (;;) {
        __WFI();
    }
}
