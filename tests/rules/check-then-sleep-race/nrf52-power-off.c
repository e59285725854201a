// device: nrf52832_xxaa
// Powering down ends in a reset: what a handler says after the test is not slept through.
#include "nrf.h"

static volatile uint32_t is_idle;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_COMPARE[0] = 0;
    is_idle = 1;
}

int main(void)
{
    NRF_P0->PIN_CNF[13] = (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (GPIO_PIN_CNF_SENSE_Low << GPIO_PIN_CNF_SENSE_Pos);
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->CC[0] = 100000;
    NRF_RTC0->INTENSET = RTC_INTENSET_COMPARE0_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE();
        if (is_idle) {
            NRF_POWER->SYSTEMOFF = POWER_SYSTEMOFF_SYSTEMOFF_Enter;
            for (;;)
                ;
        }
    }
}
