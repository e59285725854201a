#include "counter.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint16_t visits;

/* The light barrier at the hole of the bird box. */
ISR(INT0_vect)
{
    visits++;
}

void counter_start(void)
{
    PORTD |= _BV(PORTD2);
    EIMSK = _BV(INT0);
}

uint16_t counter_read(void)
{
    return visits;
}
