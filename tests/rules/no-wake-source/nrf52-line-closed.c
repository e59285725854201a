// device: nrf52832_xxaa
// The counter raises its interrupt, but neither the interrupt controller nor SEVONPEND lets it wake.
#include "nrf.h"

int main(void)
{
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // finding: no-wake-source SLEEP proven error
        NRF_RTC0->EVENTS_TICK = 0;
    }
}
