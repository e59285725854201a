#include "tap.h"

#include <avr/io.h>

void tap_init(void)
{
    PORTC.OUTCLR = PIN4_bm;
    PORTC.DIRSET = PIN4_bm;
}

void tap(uint8_t open)
{
    if (open)
        PORTC.OUTSET = PIN4_bm;
    else
        PORTC.OUTCLR = PIN4_bm;
}
