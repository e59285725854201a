// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
// An output becomes an input again by its direction bit, with the buffer as the setting left it.
#include "nrf52.h"

#define LINE 20u

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
    NRF_P0->PIN_CNF[LINE] = GPIO_PIN_CNF_DIR_Output;
    NRF_P0->OUTSET = 1u << LINE;
    NRF_P0->DIRCLR = 1u << LINE; // finding: floating-pin P0.20 proven
}

int main(void)
{
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE();
    }
}
