// device: msp430fr6989
// flags: -Wall
// A clock on a wall: the display goes on while the CPU sleeps, and the calendar wakes it once a minute to write the new time.
#include "board.h"
#include "calendar.h"
#include "display.h"

int main(void)
{
    board_init();
    display_init();
    calendar_start();
    display_time(calendar_hour(), calendar_minute());

    for (;;) {
        __disable_interrupt();
        while (!calendar_has_changed())
            board_sleep();
        __enable_interrupt();
        display_time(calendar_hour(), calendar_minute());
    }
}
