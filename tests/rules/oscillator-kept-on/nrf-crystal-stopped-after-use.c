// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// The crystal runs for a measurement only.
#include "nrf52.h"

#define CLOCK_TASKS_HFCLKSTOP REGISTER(0x40000004UL)
#define CLOCK_EVENTS_HFCLKSTARTED REGISTER(0x40000100UL)

static uint32_t started_at;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

static void measure(void)
{
    CLOCK_EVENTS_HFCLKSTARTED = 0;
    CLOCK_TASKS_HFCLKSTART = 1;
    while (!CLOCK_EVENTS_HFCLKSTARTED)
        ;
    started_at = NRF_RTC0->COUNTER;
    CLOCK_TASKS_HFCLKSTOP = 1;
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->PRESCALER = 4095;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        measure();
        __WFE(); // clean: oscillator-kept-on HFXO
    }
}
