// device: atmega1280
// flags: -DF_CPU=8000000UL -Wall
// A weather mast: an anemometer's contact wakes it, the count goes out on the serial line.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "mast.h"

static volatile uint16_t turns;

ISR(INT4_vect)
{
    turns++;
}

int main(void)
{
    mast_init();
    ACSR = _BV(ACD);
    power_all_disable();
    EICRB = _BV(ISC41);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    EIMSK = _BV(INT4); // finding: asleep-in-mode INT4 proven
    ADCSRA = _BV(ADEN); // finding: gated-write ADCSRA proven
    CLKPR = _BV(CLKPS1); // finding: locked-write CLKPR proven
    sei();

    for (;;) {
        sleep_mode(); // finding: no-wake-source SLEEP proven
        if (turns > 1000) {
            turns = 0;
            mast_light();
        }
    }
}
