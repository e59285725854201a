#include "probe.h"

static volatile int16_t levels[2];

static uint32_t settling_ticks(void)
{
    NRF_TIMER3->TASKS_START = 1; // finding: peripheral-on-in-sleep TIMER3 proven
    NRF_TIMER3->TASKS_CAPTURE[0] = 1;
    NRF_TIMER3->TASKS_STOP = 1;
    return NRF_TIMER3->CC[0];
}

void converter_read(reading *to)
{
    NRF_SAADC->CH[0].PSELP = SAADC_CH_PSELP_PSELP_AnalogInput4;
    NRF_SAADC->CH[1].PSELP = SAADC_CH_PSELP_PSELP_VDD;
    NRF_SAADC->RESULT.PTR = (uint32_t)(uintptr_t)levels;
    NRF_SAADC->RESULT.MAXCNT = 2;
    NRF_SAADC->ENABLE = SAADC_ENABLE_ENABLE_Enabled;
    NRF_SAADC->EVENTS_END = 0;
    NRF_SAADC->TASKS_START = 1;
    NRF_SAADC->TASKS_SAMPLE = 1;
    while (NRF_SAADC->EVENTS_END == 0) // finding: polling-wait SAADC.EVENTS_END proven
        ;
    NRF_SAADC->ENABLE = 0;
    to->moisture = (uint8_t)(levels[0] >> 2);
    to->battery = (uint8_t)(levels[1] >> 2);
    to->celsius = (int8_t)settling_ticks();
}
