// device: nrf52840_xxaa
// flags: -DNRF52840_XXAA -Wall
// A probe in a hay stack: each minute it measures moisture, supply and warmth, and tells the barn by radio. Opening its case wakes it, too.
#include "probe.h"

int main(void)
{
    static reading now;

    NRF_POWER->DCDCEN = POWER_DCDCEN_DCDCEN_Enabled;
    pins_prepare();
    radio_prepare();
    ticker_prepare();
    for (;;) {
        __WFE();
        now.is_opened = pins_were_opened();
        if (!ticker_take() && !now.is_opened)
            continue;
        NRF_P1->OUTSET = 1u << DIVIDER_SUPPLY;
        converter_read(&now);
        NRF_P1->OUTCLR = 1u << DIVIDER_SUPPLY;
        radio_send(&now);
    }
}
