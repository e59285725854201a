// device: atxmega256a3bu
// flags: -DF_CPU=2000000UL -Wall
// A gauge for the tide: the clock in the battery's domain wakes it every ten minutes, also after the main cells have been changed. It
// feeds a pressure sensor, takes a sample, and keeps the highest in the two bytes that the battery keeps.
#include "calendar.h"
#include "gauge.h"
#include "pins.h"

int main(void)
{
    pins_init();
    calendar_init();

    for (;;) {
        calendar_wait();
        calendar_keep_highest(gauge_read());
    }
}
