#include "pins.h"

#include <avr/io.h>
#include <avr/power.h>

#define KEYS 0xF0 /* of port B */
#define LINE_OUT PD3

void pins_init(void)
{
    PORTB = KEYS;
    DDRB = (uint8_t)~KEYS;
    PORTC = 0;
    DDRC = _BV(PC6) | _BV(PC7);
    PORTD = _BV(LINE_OUT);
    DDRD = 0xFF;
    PORTE = 0;
    DDRE = _BV(PE2) | _BV(PE6);
    PORTF = 0;
    DDRF = _BV(PF0) | _BV(PF1) | _BV(PF4) | _BV(PF5) | _BV(PF6) | _BV(PF7);

    /* The bus device of the part is not used: off, with its pads' regulator. */
    USBCON = 0;
    UHWCON = 0;
    ACSR = _BV(ACD);
    power_all_disable();
}
