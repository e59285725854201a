// device: nrf52840_xxaa
#include "nrf.h"

int main(void)
{
    if (NRF_POWER->MAINREGSTATUS & 1)
        NRF_POWER->DCDCEN0 = 1;
    NRF_POWER->DCDCEN = POWER_DCDCEN_DCDCEN_Enabled;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE(); // clean: full-power-regulator REG1
    }
}
