// device: msp430fr6972
// flags: -Wall
// A thermometer for a window: once a minute it measures and writes the display, which goes on while the CPU sleeps.
#include "board.h"
#include "display.h"
#include "sensor.h"

int main(void)
{
    board_init();
    display_init();
    board_start_minutes();

    for (;;) {
        board_sleep();
        display_number(sensor_read());
    }
}
