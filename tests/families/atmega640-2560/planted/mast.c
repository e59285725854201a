#include "mast.h"

#include <avr/io.h>
#include <util/delay.h>

#define CONTACT PE4
#define LIGHT PL2

void mast_init(void)
{
    DDRA = 0xFF;
    DDRB = 0xFF;
    DDRC = 0xFF;
    DDRD = 0xFF;
    PORTE = _BV(CONTACT);
    DDRE = (uint8_t)~_BV(CONTACT);
    DDRF = 0xFF;
    DDRG = 0x3F;
    DDRH = 0xFF;
    DDRJ = 0x7F; // finding: floating-pin PJ7 proven
    DDRK = 0xFF;
    DDRL = 0xFF;
}

void mast_light(void)
{
    PORTL |= _BV(LIGHT);
    _delay_ms(5);
    PORTL &= (uint8_t)~_BV(LIGHT);
}
