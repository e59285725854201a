// device: nrf52840_xxaa
// A channel that counts edges without the CPU: what makes the events is in use.
#include "nrf.h"

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

int main(void)
{
    NRF_P0->PIN_CNF[3] = GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos;
    NRF_GPIOTE->CONFIG[0] = GPIOTE_CONFIG_MODE_Event | (3u << GPIOTE_CONFIG_PSEL_Pos) | (GPIOTE_CONFIG_POLARITY_HiToLo << GPIOTE_CONFIG_POLARITY_Pos);
    NRF_TIMER0->MODE = 1;
    NRF_TIMER0->TASKS_START = 1;
    NRF_PPI->CH[0].EEP = (uint32_t)(uintptr_t)&NRF_GPIOTE->EVENTS_IN[0];
    NRF_PPI->CH[0].TEP = (uint32_t)(uintptr_t)&NRF_TIMER0->TASKS_COUNT;
    NRF_PPI->CHENSET = 1;
    NRF_CLOCK->TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = RTC_INTENSET_TICK_Msk;
    NVIC_EnableIRQ(RTC0_IRQn);
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: peripheral-on-in-sleep GPIOTE TIMER0
    }
}
