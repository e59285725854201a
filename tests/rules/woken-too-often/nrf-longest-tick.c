// device: nrf52832_xxaa
// The prescaler is at its end: an eighth of a second is the longest tick.
#include "nrf.h"

static volatile uint32_t ticks;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    ticks++;
}

int main(void)
{
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->PRESCALER = 4095; // clean: woken-too-often RTC0
    NRF_RTC0->INTENSET = 1;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        while (ticks < 8)
            __WFI();
        ticks = 0;
        NRF_P0->OUTSET = 1 << 17;
        NRF_P0->OUTCLR = 1 << 17;
    }
}
