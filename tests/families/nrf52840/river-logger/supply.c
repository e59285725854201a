#include "logger.h"

/* Both regulators have their inductors on this board. */
void supply_prepare(void)
{
    if (NRF_POWER->MAINREGSTATUS & 1)
        NRF_POWER->DCDCEN0 = 1;
    NRF_POWER->DCDCEN = POWER_DCDCEN_DCDCEN_Enabled;
}

void guard_prepare(void)
{
    NRF_WDT->CRV = 32768u * 180u - 1;
    NRF_WDT->CONFIG = WDT_CONFIG_SLEEP_Run;
    NRF_WDT->TASKS_START = 1;
}

void guard_feed(void)
{
    NRF_WDT->RR[0] = WDT_RR_RR_Reload;
}
