// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
#include "nrf52.h"

#define POWER_SYSTEMOFF REGISTER(0x40000500UL)
#define KEY 13u
#define PULL_UP (3u << 2)
#define SENSE_LOW (3u << 16)

int main(void)
{
    NRF_P0->PIN_CNF[KEY] = PULL_UP | SENSE_LOW;
    POWER_SYSTEMOFF = 1; // clean: no-wake-source SLEEP
    for (;;) {
    }
}
