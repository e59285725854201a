// device: nrf52840_xxaa
#include "nrf.h"

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
}

int main(void)
{
    NRF_QSPI->ENABLE = 1;
    NRF_QSPI->TASKS_ACTIVATE = 1; // finding: peripheral-on-in-sleep QSPI proven
    NRF_CRYPTOCELL->ENABLE = 1;
    NRF_CRYPTOCELL->ENABLE = 0;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE(); // clean: peripheral-on-in-sleep CRYPTOCELL
    }
}
