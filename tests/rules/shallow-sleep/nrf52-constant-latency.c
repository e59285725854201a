// device: nrf52832_xxaa
#include "nrf.h"

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
}

int main(void)
{
    NRF_POWER->TASKS_CONSTLAT = 1; // finding: shallow-sleep proven {{low-power}}
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE();
    }
}
