// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// Constant latency was asked for while a bus was in use, and never taken back.
#include "nrf52.h"

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    POWER_TASKS_CONSTLAT = 1; // finding: shallow-sleep proven {{low-power}}
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE();
    }
}
