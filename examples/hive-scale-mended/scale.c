#include "scale.h"

#include "board.h"
#include "power.h"

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
    bridge_listen();
    PORTB |= BRIDGE_SUPPLY; /* powerlint: allow load-driven-in-sleep (the bridge settles while the part sleeps) */

    /* The converter pulls its data line low when the bridge has settled and a weight is ready. */
    bridge_watch(1);
    while (!bridge_ready)
        SLEEP_UNLESS(bridge_ready, DEEP_SLEEP);
    bridge_watch(0);

    uint32_t counts = 0;
    for (uint8_t i = 0; i < BITS; i++)
        counts = counts << 1 | clock_bit();

    PORTB &= (uint8_t)~BRIDGE_SUPPLY;
    bridge_release();
    return (int32_t)(counts << 8) >> 8;
}
