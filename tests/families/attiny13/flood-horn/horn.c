#include "horn.h"

#include <avr/io.h>

void horn_init(void)
{
    PORTB = 0x08;
    DDRB = 0x17;
    ACSR = _BV(ACD);
    PRR = _BV(PRTIM0) | _BV(PRADC);
}

void horn(uint8_t on)
{
    if (on)
        PORTB |= _BV(PB4);
    else
        PORTB &= (uint8_t)~_BV(PB4);
}
