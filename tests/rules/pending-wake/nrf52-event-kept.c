// device: nrf52832_xxaa
// An event register keeps its 1 until the program writes a 0.
#include "nrf.h"

static volatile uint32_t seconds;

void RTC1_IRQHandler(void)
{
    seconds++;
}

int main(void)
{
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC1->PRESCALER = 4095;
    NRF_RTC1->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC1_IRQn);
    NRF_RTC1->TASKS_CLEAR = 1;
    NRF_RTC1->TASKS_START = 1;
    for (;;) {
        __WFE(); // finding: pending-wake RTC1.EVENTS_TICK proven error
    }
}
