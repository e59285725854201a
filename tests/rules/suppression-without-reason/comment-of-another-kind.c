// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// A comment that only mentions the product asks for nothing.
#include "nrf52.h"

int main(void)
{
    /* The settings for powerlint: allow lists are kept in the project's own file. */
    // see powerlint: allow floating-pin
    NRF_P0->PIN_CNF[13] = (3u << 2) | (3u << 16);
    for (;;) {
        __WFE();
    }
}
