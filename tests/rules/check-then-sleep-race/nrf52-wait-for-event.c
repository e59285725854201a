// device: nrf52840_xxaa
// The handler leaves an event behind, so that the instruction does not sleep after one.
#include "nrf.h"

static volatile uint32_t is_pressed;

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
    is_pressed = 1;
}

int main(void)
{
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        while (!is_pressed)
            __WFE();
        is_pressed = 0;
    }
}
