// device: atmega328p
// flags: -DF_CPU=8000000UL
// The pins in one file, the clock in a second, sleeping in a third.
#include "board.h"

int main(void)
{
    board_pins();
    board_clock(2);
    for (;;)
        board_rest(BOARD_DEEP);
}
