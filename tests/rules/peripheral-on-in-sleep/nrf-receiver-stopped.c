// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// A receiver that waits for a byte keeps the fast clock: it is stopped before sleep.
#include "nrf52.h"

#define UARTE0_TASKS_STARTRX REGISTER(0x40002000UL)
#define UARTE0_TASKS_STOPRX REGISTER(0x40002004UL)
#define UARTE0_ENABLE REGISTER(0x40002500UL)

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

static void listen(void)
{
    UARTE0_ENABLE = 8;
    UARTE0_TASKS_STARTRX = 1;
    for (volatile uint32_t i = 0; i < 100; i++)
        ;
    UARTE0_TASKS_STOPRX = 1;
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        listen();
        __WFE(); // clean: peripheral-on-in-sleep UARTE0 RTC0
    }
}
