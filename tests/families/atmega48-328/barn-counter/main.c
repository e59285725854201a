// device: atmega168p
// flags: -DF_CPU=8000000UL -Wall
// Counts the animals that pass a barn door with a light barrier, by the hour of a clock crystal.
#include "barrier.h"
#include "hours.h"
#include "pads.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

static volatile uint16_t by_hour[24];

int main(void)
{
    pads_init();
    hours_init();
    barrier_init();
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();

    while (1) {
        by_hour[hours_now()] += barrier_take();
        sleep_mode();
    }
}
