// device: nrf52840_xxaa
// Stopped when the packet is out.
#include "nrf.h"

static uint8_t packet[8];

void RADIO_IRQHandler(void)
{
    NRF_RADIO->EVENTS_DISABLED = 0;
    NRF_CLOCK->TASKS_HFCLKSTOP = 1;
}

int main(void)
{
    NRF_RADIO->SHORTS = RADIO_SHORTS_READY_START_Msk | RADIO_SHORTS_END_DISABLE_Msk;
    NRF_RADIO->PACKETPTR = (uint32_t)(uintptr_t)packet;
    NRF_RADIO->INTENSET = RADIO_INTENSET_DISABLED_Msk;
    NVIC_EnableIRQ(RADIO_IRQn);
    NRF_CLOCK->TASKS_HFCLKSTART = 1;
    NRF_RADIO->TASKS_TXEN = 1;
    while (NRF_RADIO->EVENTS_END == 0)
        ;
    NRF_CLOCK->TASKS_HFCLKSTOP = 1;
    for (;;) {
        __WFE(); // clean: oscillator-kept-on HFXO
    }
}
