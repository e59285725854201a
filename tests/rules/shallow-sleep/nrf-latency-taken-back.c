// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// System OFF would be deeper, but comes back by a reset.
#include "nrf52.h"

#define POWER_TASKS_LOWPWR REGISTER(0x4000007CUL)

void RTC0_IRQHandler(void)
{
    POWER_TASKS_CONSTLAT = 1;
    NRF_RTC0->EVENTS_TICK = 0;
    (void)NRF_RTC0->EVENTS_TICK;
    POWER_TASKS_LOWPWR = 1;
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: shallow-sleep low-power
    }
}
