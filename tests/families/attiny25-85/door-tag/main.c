// device: attiny85
// flags: -DF_CPU=1000000UL -Wall
// A tag on a door: reports by a flash of its lamp that the door moved since the last look.
#include "lamp.h"
#include "magnet.h"
#include "slumber.h"

int main(void)
{
    lamp_init();
    magnet_init();
    slumber_init();

    for (;;) {
        slumber(magnet_moved);
        lamp_flash();
    }
}
