#include "probe.h"

#define TICKS_A_MINUTE (60u * 8u)

static volatile uint32_t minutes;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_COMPARE[0] = 0;
    NRF_RTC0->TASKS_CLEAR = 1;
    minutes++;
}

void ticker_prepare(void)
{
    NRF_CLOCK->LFCLKSRC = CLOCK_LFCLKSRC_SRC_Xtal;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->PRESCALER = 4095;
    NRF_RTC0->CC[0] = TICKS_A_MINUTE;
    NRF_RTC0->INTENSET = RTC_INTENSET_COMPARE0_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
}

int ticker_take(void)
{
    static uint32_t taken;

    if (taken == minutes)
        return 0;
    taken = minutes;
    return 1;
}
