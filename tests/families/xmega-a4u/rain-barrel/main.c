// device: atxmega16a4u
// flags: -DF_CPU=2000000UL -Wall
// Opens the tap of a rain barrel for the seedlings at dawn: a light sensor's comparator output wakes it.
#include "dawn.h"
#include "parking.h"
#include "tap.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

int main(void)
{
    parking_init();
    tap_init();
    dawn_init();
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sei();

    for (;;) {
        sleep_enable();
        sleep_cpu();
        sleep_disable();
        tap(dawn_is_here());
    }
}
