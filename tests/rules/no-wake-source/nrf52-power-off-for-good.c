// device: nrf52840_xxaa
// Interrupts do not end System OFF, and no pin senses.
#include "nrf.h"

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
}

int main(void)
{
    NRF_P0->PIN_CNF[13] = GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    NRF_POWER->SYSTEMOFF = POWER_SYSTEMOFF_SYSTEMOFF_Enter; // finding: no-wake-source SLEEP proven error
    for (;;)
        ;
}
