// device: nrf52832_xxaa
// The serial trace has no clock of its own.
#include "nrf.h"

int main(void)
{
    NRF_CLOCK->TRACECONFIG = 1u << 16;
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        __WFE(); // clean: clock-output-on TRACECLK
    }
}
