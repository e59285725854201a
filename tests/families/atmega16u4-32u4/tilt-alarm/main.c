// device: atmega16u4
// flags: -DF_CPU=1000000UL -Wall
// An alarm on a bicycle: a tilt switch wakes it, a horn sounds for some seconds, and after that it listens again.
#include "horn.h"
#include "pins.h"
#include "tilt.h"

int main(void)
{
    pins_init();
    tilt_init();

    for (;;) {
        tilt_wait();
        horn_sound();
    }
}
