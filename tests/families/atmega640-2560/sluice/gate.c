#include "gate.h"

#include <avr/io.h>

/* Two latching relays: a pulse of one tick sets them. */
#define RELAY_OPEN PH3
#define RELAY_CLOSE PH4

void gate_move(enum gate to)
{
    PORTH |= to == GATE_OPEN ? _BV(RELAY_OPEN) : _BV(RELAY_CLOSE);
    for (uint8_t settle = 0; settle < 100; settle++)
        __asm__ __volatile__("nop");
    PORTH &= (uint8_t)~(_BV(RELAY_OPEN) | _BV(RELAY_CLOSE));
}
