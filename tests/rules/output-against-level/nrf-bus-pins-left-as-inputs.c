// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// board: P0.26: { pull: up, ohms: 4700 }
// board: P0.27: { pull: up, ohms: 4700 }
#include "nrf52.h"

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_P0->DIRSET = 1u << 26;
    NRF_P0->DIRCLR = 1u << 26;
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: output-against-level P0.26 P0.27
    }
}
