#include "gates.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint32_t upper_moves;
static volatile uint32_t lower_moves;

ISR(INT0_vect)
{
    upper_moves++;
}

ISR(INT1_vect)
{
    lower_moves++;
}

void gates_init(void)
{
    EICRA = _BV(ISC01) | _BV(ISC11);
    EIMSK = _BV(INT0) | _BV(INT1);
    sei();
}
