// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// The helper gives up sleeping while a byte is under way. Waiting for an event misses nothing, but skipping it burns current all the same.
#include "nrf52.h"

static volatile uint32_t is_busy;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    is_busy = !is_busy;
}

static void rest(void)
{
    if (is_busy) // finding: skipped-sleep main() proven
        return;
    __WFE();
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        rest();
    }
}
