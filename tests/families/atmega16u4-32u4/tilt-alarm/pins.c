#include "pins.h"

void pins_init(void)
{
    PORTB = 0;
    DDRB = 0xFF;
    PORTC = 0;
    DDRC = 0xC0;
    PORTD = _BV(TILT);
    DDRD = (uint8_t)~_BV(TILT);
    PORTE = 0;
    DDRE = 0x44;
    PORTF = 0;
    DDRF = 0xF3;

    USBCON = 0;
    ACSR = _BV(ACD);
    PRR0 = 0xAD;
    PRR1 = 0x99;
}
