// device: cc430f5137
// flags: -Wall
// A tag on a cow's collar: every quarter of a minute it sends its number and how often the head went down. A coin cell for a season.
#include "board.h"
#include "head.h"
#include "radio.h"
#include "ticks.h"

#define NUMBER 0x0C37

int main(void)
{
    board_init();
    radio_init();
    head_init();
    ticks_init();

    for (;;) {
        ticks_sleep();
        radio_send(NUMBER, head_take());
    }
}
