#include "stm32g0xx.h"
#include "valve.h"

static volatile uint8_t is_due;

void RTC_TAMP_IRQHandler(void)
{
    RTC->SCR = RTC_SCR_CWUTF;
    is_due = 1;
}

void clock_init(void)
{
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    while (!(RCC->BDCR & RCC_BDCR_LSERDY))
        ;
    RCC->BDCR |= RCC_BDCR_RTCSEL_0 | RCC_BDCR_RTCEN;
    NVIC_EnableIRQ(RTC_TAMP_IRQn);
}

void clock_wake_in(uint32_t seconds)
{
    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->CR &= ~RTC_CR_WUTE;
    while (!(RTC->ICSR & RTC_ICSR_WUTWF))
        ;
    RTC->WUTR = seconds - 1;
    RTC->CR |= RTC_CR_WUCKSEL_2 | RTC_CR_WUTIE | RTC_CR_WUTE;
    RTC->WPR = 0xFF;
}

int clock_is_due(void)
{
    int was = is_due;

    is_due = 0;
    return was;
}
