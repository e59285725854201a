// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// A write of 0, and a read that waits until it has got there.
#include "nrf52.h"

#define COMPARE 1

static volatile uint32_t ticks;

static void forget(volatile uint32_t *event)
{
    *event = 0;
    (void)*event;
}

void RTC0_IRQHandler(void)
{
    forget(&NRF_RTC0->EVENTS_COMPARE[COMPARE]);
    NRF_RTC0->CC[COMPARE] += 8;
    ticks++;
}

int main(void)
{
    CLOCK_LFCLKSRC = 1;
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->PRESCALER = 4095;
    NRF_RTC0->CC[COMPARE] = 8;
    NRF_RTC0->INTENSET = 1u << (16 + COMPARE);
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: pending-wake RTC0.EVENTS_COMPARE[1]
    }
}
