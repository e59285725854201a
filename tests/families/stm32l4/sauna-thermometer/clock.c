#include "stm32l4xx.h"
#include "thermometer.h"

#define LINE_OF_WAKE_UP 20

void RTC_WKUP_IRQHandler(void)
{
    RTC->ISR = ~RTC_ISR_WUTF;
    EXTI->PR1 = 1u << LINE_OF_WAKE_UP;
}

static void crystal_start(void)
{
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    while (!(RCC->BDCR & RCC_BDCR_LSERDY))
        ;
    RCC->BDCR |= RCC_BDCR_RTCSEL_0 | RCC_BDCR_RTCEN;
}

void clock_start(unsigned seconds)
{
    crystal_start();
    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->CR &= ~RTC_CR_WUTE;
    while (!(RTC->ISR & RTC_ISR_WUTWF))
        ;
    RTC->WUTR = seconds - 1;
    RTC->CR |= RTC_CR_WUCKSEL_2 | RTC_CR_WUTIE | RTC_CR_WUTE;
    RTC->WPR = 0xFF;

    EXTI->RTSR1 |= 1u << LINE_OF_WAKE_UP;
    EXTI->IMR1 |= EXTI_IMR1_IM(LINE_OF_WAKE_UP);
    NVIC_EnableIRQ(RTC_WKUP_IRQn);
}
