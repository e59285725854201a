// device: nrf52840_xxaa
// A timer that wakes the part by its compare event may want the crystal's accuracy.
#include "nrf.h"

void TIMER1_IRQHandler(void)
{
    NRF_TIMER1->EVENTS_COMPARE[0] = 0;
}

int main(void)
{
    NRF_CLOCK->TASKS_HFCLKSTART = 1;
    NRF_TIMER1->CC[0] = 1000;
    NRF_TIMER1->SHORTS = TIMER_SHORTS_COMPARE0_CLEAR_Msk;
    NRF_TIMER1->INTENSET = TIMER_INTENSET_COMPARE0_Msk;
    NVIC_EnableIRQ(TIMER1_IRQn);
    NRF_TIMER1->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: oscillator-kept-on HFXO
    }
}
