#include "lamp.h"

#include <avr/io.h>

void lamp_init(void)
{
    PORTB = 0x04;
    DDRB = 0x1B;
    ACSR = _BV(ACD);
    PRR = 0x0F;
}

void lamp_flash(void)
{
    PORTB |= _BV(PB1);
    PORTB &= (uint8_t)~_BV(PB1);
}
