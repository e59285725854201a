// device: nrf52840_xxaa
// Constant latency is given up again before the loop. System OFF would be deeper still, but does not come back.
#include "nrf.h"

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
}

int main(void)
{
    NRF_POWER->TASKS_CONSTLAT = 1;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    NRF_POWER->TASKS_LOWPWR = 1;
    for (;;) {
        __WFE(); // clean: shallow-sleep low-power
    }
}
