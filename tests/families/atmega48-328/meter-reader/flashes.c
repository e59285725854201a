#include "flashes.h"

#include "pins.h"

static volatile uint16_t flashes;

/* Both edges come here; the lamp is on after one of them. */
ISR(PCINT3_vect)
{
    if (PINE & (1 << SENSOR))
        flashes++;
}

void flashes_init(void)
{
    PCMSK3 = 1 << SENSOR;
    PCICR = 1 << PCIE3;
}

uint16_t flashes_take(void)
{
    uint16_t taken;

    cli();
    taken = flashes;
    flashes = 0;
    sei();
    return taken;
}
