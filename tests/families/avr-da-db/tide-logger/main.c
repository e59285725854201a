// device: avr128da48
// flags: -DF_CPU=1000000UL -Wall
// Writes down the water level at a quay every eight seconds; the pressure sensor gets its supply only for the reading.
#include "board.h"
#include "level.h"

int main(void)
{
    board_init();
    level_init();

    for (;;) {
        board_sleep_until_next();
        level_log();
    }
}
