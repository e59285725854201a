#include "board.h"

/* Spare pads of port B, so that nothing on them floats. */
static const uint8_t spare_b[] = {0, 3, 4, 5, 6, 7};

void board_init(void)
{
    for (uint8_t i = 0; i < sizeof spare_b; i++)
        DDRB |= (uint8_t)(1 << spare_b[i]);

    DDRB |= BRIDGE_SUPPLY | LAMP;
    DDRD |= MODEM_OUT | BRIDGE_CLOCK;
    PORTD |= MODEM_OUT | MODEM_IN | BUTTON;

    /* Half a million cycles a second are enough for a scale. */
    CLKPR = 1 << CLKPS2;
}

void lamp(uint8_t lit)
{
    if (lit)
        PORTB |= LAMP;
    else
        PORTB &= (uint8_t)~LAMP;
}
