#include "magnet.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint8_t moved;

ISR(PCINT0_vect)
{
    moved = 1;
}

void magnet_init(void)
{
    PCMSK = _BV(PCINT2);
    GIMSK = _BV(PCIE);
}

uint8_t magnet_moved(void)
{
    uint8_t was = moved;

    moved = 0;
    return was;
}
