#include "bell.h"

static volatile uint32_t presses;

void GPIOTE_IRQHandler(void)
{
    if (NRF_GPIOTE->EVENTS_PORT) {
        NRF_GPIOTE->EVENTS_PORT = 0;
        NRF_P0->LATCH = 1u << BUTTON;
        presses++;
    }
}

void button_prepare(void)
{
    NRF_P0->PIN_CNF[BUTTON] =
        (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (GPIO_PIN_CNF_SENSE_Low << GPIO_PIN_CNF_SENSE_Pos);
    NRF_GPIOTE->EVENTS_PORT = 0;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
}

uint32_t button_presses(void)
{
    return presses;
}
