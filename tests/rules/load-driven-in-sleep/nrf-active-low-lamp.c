// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// board: P0.17: { load: "lamp to the supply", active: low, milliamps: 3 }
// An output begins low: making the pin one is what lights the lamp.
#include "nrf52.h"

#define LAMP 17u

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    NRF_P0->DIRSET = 1u << LAMP; // finding: load-driven-in-sleep P0.17 proven
    for (;;) {
        __WFE();
    }
}
