// device: nrf52832_xxaa
// STOP alone leaves a timer drawing current; SHUTDOWN is what ends it.
#include "nrf.h"

static uint32_t pulse;

void GPIOTE_IRQHandler(void)
{
    NRF_GPIOTE->EVENTS_PORT = 0;
}

int main(void)
{
    NRF_GPIOTE->INTENSET = GPIOTE_INTENSET_PORT_Msk;
    NVIC_EnableIRQ(GPIOTE_IRQn);
    for (;;) {
        NRF_TIMER1->TASKS_START = 1; // finding: peripheral-on-in-sleep TIMER1 proven
        NRF_TIMER2->TASKS_START = 1;
        NRF_TIMER1->TASKS_CAPTURE[0] = 1;
        pulse = NRF_TIMER1->CC[0];
        NRF_TIMER1->TASKS_STOP = 1;
        NRF_TIMER2->TASKS_STOP = 1;
        NRF_TIMER2->TASKS_SHUTDOWN = 1;
        __WFE(); // clean: peripheral-on-in-sleep TIMER2
    }
}
