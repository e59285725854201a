#include "bell.h"

static volatile uint32_t is_over;

void RTC2_IRQHandler(void)
{
    NRF_RTC2->EVENTS_COMPARE[1] = 0;
    is_over = 1;
}

void ticker_prepare(void)
{
    NRF_CLOCK->LFCLKSRC = CLOCK_LFCLKSRC_SRC_RC;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC2->PRESCALER = 4095;
    NRF_RTC2->INTENSET = RTC_INTENSET_COMPARE1_Msk;
    NVIC_EnableIRQ(RTC2_IRQn);
}

void ticker_start(uint32_t ticks)
{
    NRF_RTC2->TASKS_STOP = 1;
    NRF_RTC2->TASKS_CLEAR = 1;
    is_over = 0;
    NRF_RTC2->CC[1] = ticks;
    NRF_RTC2->TASKS_START = 1;
}

int ticker_is_over(void)
{
    return is_over != 0;
}
