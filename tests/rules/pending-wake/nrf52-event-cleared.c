// device: nrf52840_xxaa
// Writing 0 to the event register takes the interrupt back; one of its events is enough to know that the program looks after them.
#include "nrf.h"

static volatile uint32_t seconds;

void RTC1_IRQHandler(void)
{
    NRF_RTC1->EVENTS_TICK = 0;
    seconds++;
}

int main(void)
{
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC1->PRESCALER = 4095;
    NRF_RTC1->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC1_IRQn);
    NRF_RTC1->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: pending-wake RTC1.EVENTS_TICK
    }
}
