// device: nrf52840_xxaa
// board: REG1: { fitted: yes }
// The board has the inductor.
#include "nrf.h"

int main(void)
{
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE(); // finding: full-power-regulator REG1 proven
    }
}
