// device: msp430f2274
// flags: -Wall
// Measures the heat of a radiator: every three minutes the temperatures of radiator and room, from whose difference a number grows that a small display shows. Ten years from one cell.
#include "board.h"
#include "display.h"
#include "rhythm.h"
#include "temperatures.h"

int main(void)
{
    static uint32_t heat;

    board_init();
    display_init();
    temperatures_init();
    rhythm_init();

    for (;;) {
        struct temperatures now;

        rhythm_sleep();
        temperatures_measure(&now);
        if (now.radiator > now.room + 20)
            heat += now.radiator - now.room;
        display_show(heat >> 8);
    }
}
