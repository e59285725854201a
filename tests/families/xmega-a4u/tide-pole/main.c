// device: atxmega32a4u
// flags: -DF_CPU=2000000UL -Wall
// A tide pole: the real-time counter wakes it every minute, a pressure sensor is sampled, the readings are kept.
#include "clock.h"
#include "pins.h"
#include "pressure.h"
#include "rest.h"

#define READINGS 240

static uint16_t readings[READINGS];

int main(void)
{
    uint8_t next = 0;

    pins_init();
    pressure_init();
    clock_init();

    for (;;) {
        readings[next] = pressure_read();
        next = (uint8_t)((next + 1) % READINGS);
        rest_until_minute();
    }
}
