// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// An event register stays at 1 until it is written as 0.
#include "nrf52.h"

static volatile uint32_t ticks;

void RTC0_IRQHandler(void)
{
    ticks++;
}

int main(void)
{
    CLOCK_LFCLKSRC = 1;
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->PRESCALER = 4095;
    NRF_RTC0->INTENSET = 1u << 16;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // finding: pending-wake RTC0.EVENTS_COMPARE[0] proven error
    }
}
