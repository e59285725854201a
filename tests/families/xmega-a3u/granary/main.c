// device: atxmega128a3u
// flags: -DF_CPU=2000000UL -Wall
// A probe in a granary: every minute the real-time counter wakes it, it asks a sensor on the two-wire bus and logs to a card reader
// that is only fed while it is written to.
#include "bus.h"
#include "logger.h"
#include "minute.h"
#include "power.h"

int main(void)
{
    power_init();
    minute_init();

    for (;;) {
        logger_write(bus_read_sensor());
        minute_wait();
    }
}
