// device: atxmega32e5
// flags: -DF_CPU=2000000UL -Wall
// Counts the turns of a heating pipe's impeller and adds them up by the hour of its real-time counter.
#include "hour.h"
#include "impeller.h"
#include "wiring.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

int main(void)
{
    wiring_init();
    hour_init();
    impeller_init();
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    sei();

    for (;;)
        sleep_mode();
}
