#include "clock.h"

#include "stm32l4xx.h"

#define MINUTES 10u
#define LINE_OF_WAKE_UP 20

void RTC_WKUP_IRQHandler(void)
{
    RTC->ISR = ~RTC_ISR_WUTF;
    EXTI->PR1 = 1u << LINE_OF_WAKE_UP;
}

void clock_start(void)
{
    RCC->APB1ENR1 |= RCC_APB1ENR1_PWREN;
    RCC->BDCR |= RCC_BDCR_LSEON; // finding: locked-write RCC.BDCR proven
    PWR->CR1 |= PWR_CR1_DBP;
    RCC->BDCR |= RCC_BDCR_LSEON;
    while (!(RCC->BDCR & RCC_BDCR_LSERDY))
        ;
    RCC->BDCR |= RCC_BDCR_RTCSEL_0 | RCC_BDCR_RTCEN | RCC_BDCR_LSCOSEL;
    RCC->BDCR |= RCC_BDCR_LSCOEN; // finding: clock-output-on LSCO PA2 proven

    RTC->WPR = 0xCA;
    RTC->WPR = 0x53;
    RTC->CR &= ~RTC_CR_WUTE;
    while (!(RTC->ISR & RTC_ISR_WUTWF))
        ;
    RTC->WUTR = 60 * MINUTES - 1;
    RTC->CR |= RTC_CR_WUCKSEL_2 | RTC_CR_WUTIE | RTC_CR_WUTE;
    RTC->WPR = 0xFF;

    EXTI->RTSR1 |= 1u << LINE_OF_WAKE_UP;
    EXTI->IMR1 |= EXTI_IMR1_IM(LINE_OF_WAKE_UP);
    NVIC_EnableIRQ(RTC_WKUP_IRQn);
}
