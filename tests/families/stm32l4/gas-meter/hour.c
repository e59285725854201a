#include "meter.h"

#include "stm32l4xx.h"

#define ALARM_LINE 18

static volatile uint8_t is_over;

void RTC_Alarm_IRQHandler(void)
{
    RTC->ISR = ~RTC_ISR_ALRAF;
    EXTI->PR1 = 1u << ALARM_LINE;
    is_over = 1;
}

void crystal_start(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    while (!(RCC->BDCR & RCC_BDCR_LSERDY))
        ;
    RCC->BDCR |= RCC_BDCR_RTCSEL_0 | RCC_BDCR_RTCEN;
}

// Once an hour: the alarm looks at minutes and seconds only.
void hour_start(void)
{
    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->CR &= ~RTC_CR_ALRAE;
    while (!(RTC->ISR & RTC_ISR_ALRAWF))
        ;
    RTC->ALRMAR = RTC_ALRMAR_MSK4 | RTC_ALRMAR_MSK3;
    RTC->CR |= RTC_CR_ALRAIE | RTC_CR_ALRAE;
    RTC->WPR = 0xFF;

    EXTI->RTSR1 |= 1u << ALARM_LINE;
    EXTI->IMR1 |= EXTI_IMR1_IM(ALARM_LINE);
    NVIC_EnableIRQ(RTC_Alarm_IRQn);
}

int hour_is_over(void)
{
    int was = is_over;

    is_over = 0;
    return was;
}
