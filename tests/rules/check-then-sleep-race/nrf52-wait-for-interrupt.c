// device: nrf52840_xxaa
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
        if (!is_pressed)
            __WFI(); // finding: check-then-sleep-race is_pressed proven
        is_pressed = 0;
    }
}
