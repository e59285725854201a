#include "tip.h"

#include <avr/interrupt.h>
#include <avr/io.h>

volatile uint8_t tips;

/* The reed contact of the tipping bucket. */
ISR(PCINT0_vect)
{
    tips++;
}

void tip_start(void)
{
    PCMSK = _BV(PCINT3);
    GIMSK = _BV(PCIE);
}
