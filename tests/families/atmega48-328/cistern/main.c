// device: atmega88pa
// flags: -DF_CPU=1000000UL -Wall
// Tells a house when its rain cistern runs low: a float switch wakes it, a lamp blinks once a watchdog period while it is low.
#include "board.h"
#include "float_switch.h"
#include "nap.h"

int main(void)
{
    board_init();
    float_switch_init();
    nap_init();

    for (;;) {
        lamp(float_switch_is_low());
        lamp(0);
        nap();
    }
}
