#include "logger.h"

static volatile uint32_t minutes;

void RTC2_IRQHandler(void)
{
    NRF_RTC2->EVENTS_COMPARE[0] = 0;
    NRF_RTC2->TASKS_CLEAR = 1;
    minutes++;
}

void clock_prepare(void)
{
    NRF_CLOCK->LFCLKSRC = CLOCK_LFCLKSRC_SRC_Xtal;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC2->PRESCALER = 4095;
    NRF_RTC2->CC[0] = 60 * 8;
    NRF_RTC2->INTENSET = RTC_INTENSET_COMPARE0_Msk;
    NVIC_EnableIRQ(RTC2_IRQn);
    NRF_RTC2->TASKS_START = 1;
}

uint32_t clock_minutes(void)
{
    return minutes;
}
