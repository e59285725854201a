// device: attiny88
// flags: -DF_CPU=1000000UL -Wall
// Counts who goes in and out at a hive's entrance: two light gates a channel, sampled a few times a second; a reader on the two-wire
// bus asks for the sums by address, also while the part sleeps.
#include "gates.h"
#include "reader.h"
#include "ticks.h"

int main(void)
{
    gates_init();
    reader_init();
    ticks_init();

    for (;;) {
        ticks_wait();
        gates_sample();
    }
}
