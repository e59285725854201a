#include "panel.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>

#define KEY PB6
#define LAMPS 0xFF /* all of port A */

static volatile uint8_t pressed;

ISR(PCINT_vect)
{
    if ((PINB & _BV(KEY)) == 0)
        pressed = 1;
}

void panel_init(void)
{
    PORTA = 0;
    DDRA = LAMPS;
    PORTB = _BV(KEY);
    DDRB = (uint8_t)~_BV(KEY);
    PCMSK0 = 0;
    PCMSK1 = _BV(PCINT14);
    GIMSK = _BV(PCIE1);
    ACSRA = _BV(ACD);
    power_all_disable();
}

uint8_t panel_key_was_pressed(void)
{
    uint8_t was = pressed;

    pressed = 0;
    return was;
}

void panel_show(uint8_t minutes)
{
    PORTA = minutes >= 8 ? LAMPS : (uint8_t)(_BV(minutes) - 1);
}
