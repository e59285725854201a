// device: nrf52840_xxaa
// flags: -DNRF52840_XXAA -Wall
// The probe of the hay stack as a first draft had it.
#include "probe.h"

int main(void)
{
    static reading now;

    NRF_WDT->CRV = 32768u * 180u - 1;
    NRF_WDT->TASKS_START = 1;
    NRF_WDT->CONFIG = WDT_CONFIG_SLEEP_Pause; // finding: locked-write WDT.CONFIG proven
    NRF_POWER->DCDCEN = POWER_DCDCEN_DCDCEN_Enabled;
    pins_prepare();
    radio_prepare();
    ticker_prepare();
    for (;;) {
        NRF_WDT->RR[0] = WDT_RR_RR_Reload;
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
