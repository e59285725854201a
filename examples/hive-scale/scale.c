#include "scale.h"

#include "board.h"

#define SETTLING_MILLISECONDS 420
#define BITS 24

static uint8_t clock_bit(void)
{
    PORTD |= BRIDGE_CLOCK;
    uint8_t bit = (PIND & BRIDGE_DATA) != 0;
    PORTD &= (uint8_t)~BRIDGE_CLOCK;
    return bit;
}

int32_t scale_weigh(void)
{
    PORTB |= BRIDGE_SUPPLY;
    delay_milliseconds(SETTLING_MILLISECONDS);

    uint32_t counts = 0;
    for (uint8_t i = 0; i < BITS; i++)
        counts = counts << 1 | clock_bit();

    PORTB &= (uint8_t)~BRIDGE_SUPPLY;
    return (int32_t)(counts << 8) >> 8;
}
