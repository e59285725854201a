#include "board.h"
#include <avr/io.h>

void board_clock(uint8_t shift)
{
    CLKPR = _BV(CLKPCE);
    CLKPR = shift;
    PRR |= _BV(PRUSART0) | _BV(PRTWI);
}
