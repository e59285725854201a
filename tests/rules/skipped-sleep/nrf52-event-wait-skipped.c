// device: nrf52832_xxaa
// Where the test sends the loop round before the wait for an event, it does not sleep until the sample is there.
#include "nrf.h"

static volatile uint32_t is_sampling;

void SAADC_IRQHandler(void)
{
    NRF_SAADC->EVENTS_END = 0;
    is_sampling = 0;
}

void RTC1_IRQHandler(void)
{
    NRF_RTC1->EVENTS_TICK = 0;
}

int main(void)
{
    NRF_SAADC->INTENSET = SAADC_INTENSET_END_Msk;
    NRF_SAADC->ENABLE = SAADC_ENABLE_ENABLE_Enabled;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC1->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(SAADC_IRQn);
    NVIC_EnableIRQ(RTC1_IRQn);
    NRF_RTC1->TASKS_START = 1;
    for (;;) {
        if (is_sampling) // finding: skipped-sleep main() proven warning
            continue;
        __WFE();
        is_sampling = 1;
        NRF_SAADC->TASKS_START = 1;
        NRF_SAADC->TASKS_SAMPLE = 1;
    }
}
