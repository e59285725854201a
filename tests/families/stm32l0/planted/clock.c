#include "clock.h"

#include "stm32l0xx.h"

#define SECONDS 60u
#define LINE_OF_WAKE_UP 20

// The clock's wake-up timer, on the crystal, at one tick a second.
void clock_start(void)
{
    RCC->APB1ENR |= RCC_APB1ENR_PWREN;
    PWR->CR |= PWR_CR_DBP;
    RCC->CSR |= RCC_CSR_LSEON;
    while (!(RCC->CSR & RCC_CSR_LSERDY))
        ;
    RCC->CSR |= RCC_CSR_RTCSEL_LSE | RCC_CSR_RTCEN;

    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->CR &= ~RTC_CR_WUTE;
    while (!(RTC->ISR & RTC_ISR_WUTWF))
        ;
    RTC->WUTR = SECONDS - 1;
    RTC->CR |= RTC_CR_WUCKSEL_2 | RTC_CR_WUTIE | RTC_CR_WUTE;
    RTC->WPR = 0xFF;

    EXTI->RTSR |= 1u << LINE_OF_WAKE_UP;
    EXTI->IMR |= EXTI_IMR_IM(LINE_OF_WAKE_UP);
    NVIC_EnableIRQ(RTC_IRQn);
}

void RTC_IRQHandler(void)
{
    RTC->ISR = ~RTC_ISR_WUTF;
    EXTI->PR = 1u << LINE_OF_WAKE_UP;
}
