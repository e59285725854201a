#include "light.h"

#include <avr/io.h>

void light_start(void)
{
    DDRB = _BV(DDB0);
    PORTB = 0x3E;
    PRR = 0x0F;
}
