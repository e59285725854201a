#include <avr/io.h>
#include "pins.h"

void pins_park_all(void)
{
    DDRB = DDRC = DDRD = 0xff;
}

void pins_release(uint8_t bit)
{
    DDRD &= ~(1 << bit); // finding: floating-pin PD3 proven warning
}
