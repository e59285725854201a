// device: nrf52832_xxaa
#include "nrf.h"

static volatile int16_t level[1];

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_SAADC->TASKS_SAMPLE = 1;
}

int main(void)
{
    NRF_P0->PIN_CNF[2] = 0;
    NRF_SAADC->CH[0].PSELP = SAADC_CH_PSELP_PSELP_AnalogInput0; // finding: analog-pin-buffer-on P0.02 proven
    NRF_SAADC->CH[1].PSELP = SAADC_CH_PSELP_PSELP_AnalogInput4; // clean: analog-pin-buffer-on P0.28
    NRF_SAADC->RESULT.PTR = (uint32_t)(uintptr_t)level;
    NRF_SAADC->RESULT.MAXCNT = 2;
    NRF_SAADC->ENABLE = SAADC_ENABLE_ENABLE_Enabled;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE();
    }
}
