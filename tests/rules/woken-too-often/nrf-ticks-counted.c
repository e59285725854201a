// device: nrf52832_xxaa
// A tick each millisecond, of which a hundred are counted: the prescaler reaches that far.
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
    NRF_RTC0->PRESCALER = 32; // finding: woken-too-often RTC0
    NRF_RTC0->INTENSET = 1;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        while (ticks < 100)
            __WFI();
        ticks = 0;
        NRF_P0->OUTSET = 1 << 17;
        NRF_P0->OUTCLR = 1 << 17;
    }
}
