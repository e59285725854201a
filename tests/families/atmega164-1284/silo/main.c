// device: atmega1284p
// flags: -DF_CPU=1000000UL -Wall
// Measures how full a grain silo is with two strain gauges, every eight seconds, and keeps the lowest reading.
#include "gauge.h"
#include "pins.h"
#include "pause.h"

static uint16_t lowest = UINT16_MAX;

int main(void)
{
    pins_init();
    gauge_init();
    pause_init();

    for (;;) {
        uint16_t weight = (uint16_t)(gauge_read(0) + gauge_read(1));
        if (weight < lowest)
            lowest = weight;
        pause();
    }
}
