// device: nrf52832_xxaa
// The same without what ends them: no shortcut, a long buffer, no stop on the bus.
#include "nrf.h"

static volatile int16_t levels[64];
static uint8_t reading[2];

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_SAADC->TASKS_SAMPLE = 1;
}

int main(void)
{
    NRF_RNG->TASKS_START = 1; // finding: peripheral-on-in-sleep RNG proven
    NRF_SAADC->RESULT.PTR = (uint32_t)(uintptr_t)levels;
    NRF_SAADC->RESULT.MAXCNT = 64;
    NRF_SAADC->ENABLE = SAADC_ENABLE_ENABLE_Enabled;
    NRF_SAADC->TASKS_START = 1; // finding: peripheral-on-in-sleep SAADC proven
    NRF_TWIM0->ENABLE = TWIM_ENABLE_ENABLE_Enabled; // finding: peripheral-on-in-sleep TWIM0 proven
    NRF_TWIM0->RXD.PTR = (uint32_t)(uintptr_t)reading;
    NRF_TWIM0->RXD.MAXCNT = sizeof reading;
    NRF_TWIM0->TASKS_STARTRX = 1;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE();
    }
}
