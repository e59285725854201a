// device: nrf52832_xxaa
// A reading of the thermometer, one random number, a cipher block, one conversion and one transfer end by themselves.
#include "nrf.h"

static volatile int16_t level;
static uint8_t block[48];
static uint8_t reading[2];

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_TEMP->TASKS_START = 1;
    NRF_RNG->TASKS_START = 1;
    NRF_ECB->TASKS_STARTECB = 1;
    NRF_SAADC->TASKS_START = 1;
    NRF_SAADC->TASKS_SAMPLE = 1;
    NRF_TWIM0->TASKS_STARTRX = 1;
    NRF_SPIM1->TASKS_START = 1;
}

int main(void)
{
    NRF_RNG->SHORTS = RNG_SHORTS_VALRDY_STOP_Msk;
    NRF_ECB->ECBDATAPTR = (uint32_t)(uintptr_t)block;
    NRF_SAADC->CH[0].PSELP = SAADC_CH_PSELP_PSELP_VDD;
    NRF_SAADC->RESULT.PTR = (uint32_t)(uintptr_t)&level;
    NRF_SAADC->RESULT.MAXCNT = 1;
    NRF_SAADC->ENABLE = SAADC_ENABLE_ENABLE_Enabled;
    NRF_TWIM0->ENABLE = TWIM_ENABLE_ENABLE_Enabled;
    NRF_TWIM0->SHORTS = TWIM_SHORTS_LASTRX_STOP_Msk;
    NRF_TWIM0->RXD.PTR = (uint32_t)(uintptr_t)reading;
    NRF_TWIM0->RXD.MAXCNT = sizeof reading;
    NRF_SPIM1->ENABLE = SPIM_ENABLE_ENABLE_Enabled;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: peripheral-on-in-sleep RNG SAADC TWIM0 SPIM1 RTC0
    }
}
