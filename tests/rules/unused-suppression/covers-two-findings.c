// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// rules: oscillator-kept-on, peripheral-on-in-sleep, suppression-without-reason, unused-suppression
// Both starts stand on the line.
#include "nrf52.h"

#define TIMER2_TASKS_START REGISTER(0x4000A000UL)

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
    // powerlint: allow oscillator-kept-on, peripheral-on-in-sleep (the counter drives a scope on the bench)
    CLOCK_TASKS_HFCLKSTART = 1, TIMER2_TASKS_START = 1;
    for (;;) {
        __WFE();
    }
}
