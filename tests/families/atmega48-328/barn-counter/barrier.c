#include "barrier.h"

#include <avr/interrupt.h>
#include <avr/io.h>

static volatile uint8_t passed;

ISR(PCINT0_vect)
{
    if (PINB & _BV(PB0))
        passed++;
}

void barrier_init(void)
{
    PCMSK0 = _BV(PCINT0);
    PCICR |= _BV(PCIE0);
}

uint8_t barrier_take(void)
{
    uint8_t taken;

    cli();
    taken = passed;
    passed = 0;
    sei();
    return taken;
}
