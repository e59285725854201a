// device: msp430fr5994
// flags: -Wall
// A buoy tells the water's temperature once an hour. In between all but the real-time clock is off: its event starts the program anew.
#include "board.h"
#include "radio.h"
#include "thermometer.h"

int main(void)
{
    board_init();
    radio_send(thermometer_read());
    board_off_for_an_hour();
    return 0;
}
