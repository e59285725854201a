#include "board.h"

#include <avr/io.h>

void board_init(void)
{
    /* Three spare analog pins have copper to the edge of the board, and get pull-ups. */
    DDRB = 0xFF;
    PORTB = 0x00;
    DDRC = 0x78;
    PORTC = 0x07;
    DDRD = 0xEF;
    PORTD = 1 << FLOAT_SWITCH;

    ACSR = 1 << ACD;
    PRR = 0xEF;
}

void lamp(uint8_t lit)
{
    if (lit)
        PORTB |= 1 << LAMP;
    else
        PORTB &= (uint8_t)~(1 << LAMP);
}
