// device: nrf52832_xxaa
// The watchdog's configuration counts no more once it runs.
#include "nrf.h"

int main(void)
{
    NRF_WDT->CRV = 32768 * 8 - 1;
    NRF_WDT->TASKS_START = 1;
    NRF_WDT->CONFIG = WDT_CONFIG_SLEEP_Pause; // finding: locked-write WDT.CONFIG proven
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        NRF_WDT->RR[0] = WDT_RR_RR_Reload;
        __WFE();
    }
}
