// device: atmega644pa
// flags: -DF_CPU=1000000UL -Wall
// A bird feeder that weighs who lands on it, and keeps the last visits for a reader on the serial line.
#include "perch.h"
#include "pins.h"
#include "reader.h"
#include "visits.h"

int main(void)
{
    pins_init();
    perch_init();
    reader_init();

    for (;;) {
        if (perch_wait() == PERCH_TAKEN)
            visits_add(perch_weight());
        else
            reader_send(visits_recorded(), VISITS_KEPT);
    }
}
