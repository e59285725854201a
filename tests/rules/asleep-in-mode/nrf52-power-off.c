// device: nrf52832_xxaa
// A part that powers down asks no more of its timers: a reset follows, and the pin that senses brings it.
#include "nrf.h"

static volatile uint32_t minutes;

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    minutes++;
}

int main(void)
{
    NRF_P0->PIN_CNF[13] = (GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos) | (GPIO_PIN_CNF_SENSE_Low << GPIO_PIN_CNF_SENSE_Pos);
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->PRESCALER = 4095;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    while (minutes < 480)
        __WFE(); // clean: asleep-in-mode RTC0
    NRF_POWER->SYSTEMOFF = POWER_SYSTEMOFF_SYSTEMOFF_Enter;
    for (;;)
        ;
}
