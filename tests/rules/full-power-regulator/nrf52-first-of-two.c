// device: nrf52840_xxaa
// With the supply at VDD only the second regulator is in use.
#include "nrf.h"

int main(void)
{
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE(); // finding: full-power-regulator REG1 board-dependent
    }
}
