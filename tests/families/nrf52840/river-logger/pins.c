#include "logger.h"

static volatile uint32_t tips;
static volatile uint32_t is_asked;

static uint32_t sense(uint32_t level)
{
    return (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (level << GPIO_PIN_CNF_SENSE_Pos);
}

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
    if (NRF_P0->LATCH & (1u << FLOAT_SWITCH)) {
        NRF_P0->LATCH = 1u << FLOAT_SWITCH;
        tips++;
        /* The other level next, so that a float that rests closed is no wake-up after another. */
        if (NRF_P0->IN & (1u << FLOAT_SWITCH))
            NRF_P0->PIN_CNF[FLOAT_SWITCH] = sense(GPIO_PIN_CNF_SENSE_Low);
        else
            NRF_P0->PIN_CNF[FLOAT_SWITCH] = sense(GPIO_PIN_CNF_SENSE_High);
    }
    if (NRF_P1->LATCH & (1u << LINE_ASK)) {
        NRF_P1->LATCH = 1u << LINE_ASK;
        is_asked = 1;
    }
}

void pins_prepare(void)
{
    NRF_P0->OUTSET = 1u << LINE_TXD;
    NRF_P0->DIRSET = 1u << LINE_TXD;
    NRF_P0->PIN_CNF[FLOAT_SWITCH] = sense(GPIO_PIN_CNF_SENSE_Low);
    NRF_P1->PIN_CNF[LINE_ASK] = sense(GPIO_PIN_CNF_SENSE_Low);
    NRF_GPIOTE->EVENTS_PORT = 0;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
}

uint32_t pins_tips(void)
{
    return tips;
}

int pins_is_asked(void)
{
    uint32_t was = is_asked;

    is_asked = 0;
    return was != 0;
}
