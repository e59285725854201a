// device: nrf52840_xxaa
#include "nrf.h"

int main(void)
{
    NRF_P1->PIN_CNF[2] = (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (GPIO_PIN_CNF_SENSE_Low << GPIO_PIN_CNF_SENSE_Pos);
    NRF_POWER->SYSTEMOFF = POWER_SYSTEMOFF_SYSTEMOFF_Enter; // clean: no-wake-source SLEEP
    for (;;)
        ;
}
