// device: atxmega32e5
// flags: -DF_CPU=2000000UL -Wall
// A sundial that rings at noon: a photo cell is compared once a minute.
#include "bell.h"
#include "cell.h"
#include "pins.h"
#include "timekeeper.h"

#define BRIGHTEST 1800

int main(void)
{
    pins_init();
    timekeeper_init();

    for (;;) {
        timekeeper_wait();
        if (cell_read() > BRIGHTEST)
            bell_ring();
    }
}
