// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// Behind System OFF the loop is never reached: waking is a reset.
#include "nrf52.h"

#define POWER_SYSTEMOFF REGISTER(0x40000500UL)

int main(void)
{
    NRF_P0->PIN_CNF[13] = (3u << 2) | (3u << 16);
    NRF_P0->OUT = 1u << 17;
    POWER_SYSTEMOFF = 1;
    for (;;) {
    }
}
