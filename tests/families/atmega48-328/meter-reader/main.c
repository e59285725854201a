// device: atmega328pb
// flags: -DF_CPU=1000000UL -Wall
// Reads the lamp of an electricity meter: each flash counts on a pin of the fourth port, and every eight seconds the watchdog wakes it
// to see whether an hour is full; then the sum goes out on the second serial port.
#include "flashes.h"
#include "hours.h"
#include "pins.h"
#include "sender.h"

int main(void)
{
    pins_init();
    flashes_init();
    hours_init();

    for (;;) {
        hours_wait();
        sender_send(flashes_take());
    }
}
