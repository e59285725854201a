#include "lamp.h"

#include <avr/io.h>

#define LAMP PB0

/* Pins that lead nowhere: driven low. */
#define SPARE (_BV(PB1) | _BV(PB3))

void lamp_init(void)
{
    PORTB &= (uint8_t)~(_BV(LAMP) | SPARE);
    DDRB |= _BV(LAMP) | SPARE;
}

void lamp_switch(uint8_t lit)
{
    if (lit)
        PORTB |= _BV(LAMP);
    else
        PORTB &= (uint8_t)~_BV(LAMP);
}
