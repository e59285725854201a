// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// Only a pin that senses, or the comparator, ends System OFF; the clock's tick does not.
#include "nrf52.h"

#define POWER_SYSTEMOFF REGISTER(0x40000500UL)
#define KEY 13u

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
    NRF_P0->PIN_CNF[KEY] = 3u << 2;
    POWER_SYSTEMOFF = 1; // finding: no-wake-source SLEEP proven error
    for (;;) {
    }
}
