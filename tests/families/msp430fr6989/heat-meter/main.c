// device: msp430fr5989
// flags: -Wall
// A meter of heat without a display: the scan interface counts the turns of a wheel by itself and wakes the CPU when a hundred are
// full; then the two thermometers are read and the heat is summed up.
#include "board.h"
#include "thermometers.h"
#include "wheel.h"

static volatile uint32_t heat;

int main(void)
{
    board_init();
    wheel_start();

    for (;;) {
        board_sleep();
        heat += thermometers_difference();
    }
}
