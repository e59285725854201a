// device: nrf52840_xxaa
#include "nrf.h"

int main(void)
{
    NRF_CLOCK->TRACECONFIG = 2u << 16; // finding: clock-output-on TRACECLK P0.07 proven
    NRF_P0->PIN_CNF[13] = (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (GPIO_PIN_CNF_SENSE_Low << GPIO_PIN_CNF_SENSE_Pos);
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE();
    }
}
