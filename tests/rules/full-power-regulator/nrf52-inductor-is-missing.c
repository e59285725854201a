// device: nrf52840_xxaa
// board: REG1: { fitted: no }
// The board has no inductor: the linear regulator is all there is.
#include "nrf.h"

int main(void)
{
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE(); // clean: full-power-regulator REG1
    }
}
