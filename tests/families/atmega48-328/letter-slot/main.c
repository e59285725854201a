// device: atmega328pb
// flags: -DF_CPU=1000000UL -Wall
// A letter slot: its flap, on the fourth port, wakes the part from power-down; a second serial line tells the house.
#include "slot.h"

int main(void)
{
    uint8_t told = 0;

    pins_prepare();
    sei();
    for (;;) {
        cli();
        if (told == flap_events()) {
            SMCR = 1 << SM1 | 1 << SE;
            sei();
            sleep_cpu();
            SMCR = 0;
            continue;
        }
        sei();
        told++;
        line_send('L');
    }
}
