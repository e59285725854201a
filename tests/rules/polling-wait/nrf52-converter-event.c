// device: nrf52840_xxaa
#include "nrf.h"

static volatile int16_t level;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

int main(void)
{
    NRF_SAADC->CH[0].PSELP = SAADC_CH_PSELP_PSELP_VDD;
    NRF_SAADC->RESULT.PTR = (uint32_t)(uintptr_t)&level;
    NRF_SAADC->RESULT.MAXCNT = 1;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        NRF_SAADC->ENABLE = SAADC_ENABLE_ENABLE_Enabled;
        NRF_SAADC->EVENTS_END = 0;
        NRF_SAADC->TASKS_START = 1;
        NRF_SAADC->TASKS_SAMPLE = 1;
        while (NRF_SAADC->EVENTS_END == 0) // finding: polling-wait SAADC.EVENTS_END proven
            ;
        NRF_SAADC->ENABLE = 0;
        __WFE();
    }
}
