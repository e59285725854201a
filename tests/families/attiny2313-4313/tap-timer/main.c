// device: attiny4313
// flags: -DF_CPU=1000000UL -Wall
// A timer for a garden tap: the key opens it, it closes by itself; a service line tells how often.
#include "service.h"
#include "tap.h"
#include "wake.h"

int main(void)
{
    tap_init();
    service_init();
    wake_init();

    for (;;) {
        uint8_t causes = wake_wait();

        if (causes & WOKEN_BY_KEY)
            tap_open();
        if (causes & WOKEN_BY_TIME)
            tap_tick();
        if (causes & WOKEN_BY_SERVICE)
            service_send(tap_openings());
    }
}
