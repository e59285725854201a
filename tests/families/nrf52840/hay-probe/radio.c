#include "probe.h"

static uint8_t packet[6];
static volatile uint32_t is_running;
static volatile uint32_t is_sent;

void POWER_CLOCK_IRQHandler(void)
{
    NRF_CLOCK->EVENTS_HFCLKSTARTED = 0;
    is_running = 1;
}

void RADIO_IRQHandler(void)
{
    NRF_RADIO->EVENTS_DISABLED = 0;
    is_sent = 1;
}

void radio_prepare(void)
{
    NRF_RADIO->MODE = 0;
    NRF_RADIO->FREQUENCY = 7;
    NRF_RADIO->PCNF0 = 8;
    NRF_RADIO->PCNF1 = sizeof packet | 3u << 16;
    NRF_RADIO->BASE0 = 0x48415900;
    NRF_RADIO->PREFIX0 = 0x50;
    NRF_RADIO->SHORTS = RADIO_SHORTS_READY_START_Msk | RADIO_SHORTS_END_DISABLE_Msk;
    NRF_RADIO->INTENSET = RADIO_INTENSET_DISABLED_Msk;
    NVIC_EnableIRQ(RADIO_IRQn);
    NRF_CLOCK->INTENSET = 1;
    NVIC_EnableIRQ(POWER_CLOCK_IRQn);
}

void radio_send(const reading *what)
{
    packet[0] = 4;
    packet[1] = what->moisture;
    packet[2] = what->battery;
    packet[3] = (uint8_t)what->celsius;
    packet[4] = what->is_opened;
    is_running = 0;
    NRF_CLOCK->TASKS_HFCLKSTART = 1;
    while (!is_running)
        __WFE();
    is_sent = 0;
    NRF_RADIO->PACKETPTR = (uint32_t)(uintptr_t)packet;
    NRF_RADIO->TASKS_TXEN = 1;
    while (!is_sent)
        __WFE();
    NRF_CLOCK->TASKS_HFCLKSTOP = 1;
}
