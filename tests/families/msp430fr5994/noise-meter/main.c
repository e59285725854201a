// device: msp430fr5994
// flags: -Wall
// Counts how often a machine's hall is louder than a threshold; a key shows the count on a bar of lamps for some seconds.
#include "bar.h"
#include "hall.h"
#include "listener.h"

int main(void)
{
    hall_init();
    listener_init();
    bar_init();

    for (;;) {
        hall_wait();
        bar_show(listener_count());
    }
}
