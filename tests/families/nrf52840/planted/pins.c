#include "probe.h"

static volatile uint8_t is_opened;

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
    is_opened = 1;
}

void pins_prepare(void)
{
    NRF_P1->OUTCLR = 1u << DIVIDER_SUPPLY;
    NRF_P1->DIRSET = 1u << DIVIDER_SUPPLY;
    NRF_P1->PIN_CNF[7] = 0; // finding: floating-pin P1.07 proven
    NRF_P1->PIN_CNF[TAMPER] =
        (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (GPIO_PIN_CNF_SENSE_High << GPIO_PIN_CNF_SENSE_Pos);
    NRF_GPIOTE->EVENTS_PORT = 0;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
}

uint8_t pins_were_opened(void)
{
    uint8_t were = is_opened;

    is_opened = 0;
    return were;
}
