#include "probe.h"

static volatile int16_t levels[2];
static volatile uint32_t is_converted;
static volatile uint32_t is_warm;

void SAADC_IRQHandler(void)
{
    NRF_SAADC->EVENTS_END = 0;
    is_converted = 1;
}

void TEMP_IRQHandler(void)
{
    NRF_TEMP->EVENTS_DATARDY = 0;
    is_warm = 1;
}

static void channel(uint32_t n, uint32_t input)
{
    NRF_SAADC->CH[n].CONFIG = (SAADC_CH_CONFIG_GAIN_Gain1_6 << SAADC_CH_CONFIG_GAIN_Pos)
                              | (SAADC_CH_CONFIG_TACQ_10us << SAADC_CH_CONFIG_TACQ_Pos);
    NRF_SAADC->CH[n].PSELP = input;
}

void converter_read(reading *to)
{
    is_converted = 0;
    is_warm = 0;
    channel(0, SAADC_CH_PSELP_PSELP_AnalogInput4);
    channel(1, SAADC_CH_PSELP_PSELP_VDD);
    NRF_SAADC->RESULT.PTR = (uint32_t)(uintptr_t)levels;
    NRF_SAADC->RESULT.MAXCNT = 2;
    NRF_SAADC->INTENSET = SAADC_INTENSET_END_Msk;
    NVIC_EnableIRQ(SAADC_IRQn);
    NRF_SAADC->ENABLE = SAADC_ENABLE_ENABLE_Enabled;
    NRF_SAADC->TASKS_START = 1;
    NRF_SAADC->TASKS_SAMPLE = 1;
    NRF_TEMP->INTENSET = TEMP_INTENSET_DATARDY_Msk;
    NVIC_EnableIRQ(TEMP_IRQn);
    NRF_TEMP->TASKS_START = 1;
    while (!is_converted || !is_warm)
        __WFE();
    NRF_SAADC->ENABLE = 0;
    to->moisture = (uint8_t)(levels[0] >> 2);
    to->battery = (uint8_t)(levels[1] >> 2);
    to->celsius = (int8_t)((int32_t)NRF_TEMP->TEMP / 4);
}
