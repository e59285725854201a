#include "board.h"
#include <avr/io.h>

static const uint8_t outputs[] = {1, 3, 5};

void board_pins(void)
{
    for (uint8_t i = 0; i < sizeof outputs; i++)
        DDRB |= 1 << outputs[i];
    PORTB = ~DDRB & 0x3F;
    DDRD = 0xFF;
    PORTC = 0x7F;
}
