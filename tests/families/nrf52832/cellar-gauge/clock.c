#include "board.h"

#define HERTZ 8u /* 32768 Hz divided by 4096 */

static volatile uint32_t is_due;
static uint32_t interval;

void RTC1_IRQHandler(void)
{
    if (NRF_RTC1->EVENTS_COMPARE[0]) {
        NRF_RTC1->EVENTS_COMPARE[0] = 0;
        NRF_RTC1->CC[0] = (NRF_RTC1->CC[0] + interval) & 0xFFFFFF;
        is_due = 1;
    }
}

void clock_prepare(uint32_t seconds)
{
    interval = seconds * HERTZ;
    NRF_CLOCK->LFCLKSRC = CLOCK_LFCLKSRC_SRC_Xtal;
    NRF_CLOCK->EVENTS_LFCLKSTARTED = 0;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    while (NRF_CLOCK->EVENTS_LFCLKSTARTED == 0)
        ;
    NRF_RTC1->PRESCALER = 32768 / HERTZ - 1;
    NRF_RTC1->CC[0] = interval;
    NRF_RTC1->INTENSET = RTC_INTENSET_COMPARE0_Msk;
    NVIC_EnableIRQ(RTC1_IRQn);
    NRF_RTC1->TASKS_START = 1;
}

int clock_take(void)
{
    if (!is_due)
        return 0;
    is_due = 0;
    return 1;
}
