// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// From the first tick on the 32 MHz crystal is on, and no radio uses it.
#include "nrf52.h"

static volatile uint32_t ticks;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    if (++ticks % 64 == 0)
        CLOCK_TASKS_HFCLKSTART = 1; // finding: oscillator-kept-on HFXO possible
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->PRESCALER = 4095;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: oscillator-kept-on LFCLK
    }
}
