// device: nrf52832_xxaa
// The transmitter is off again by its shortcut; the crystal that it wanted runs on.
#include "nrf.h"

static uint8_t packet[8];

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_RADIO->PACKETPTR = (uint32_t)(uintptr_t)packet;
    NRF_RADIO->TASKS_TXEN = 1;
}

int main(void)
{
    NRF_CLOCK->EVENTS_HFCLKSTARTED = 0;
    NRF_CLOCK->TASKS_HFCLKSTART = 1; // finding: oscillator-kept-on HFXO proven
    while (NRF_CLOCK->EVENTS_HFCLKSTARTED == 0)
        ;
    NRF_RADIO->SHORTS = RADIO_SHORTS_READY_START_Msk | RADIO_SHORTS_END_DISABLE_Msk;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE();
    }
}
