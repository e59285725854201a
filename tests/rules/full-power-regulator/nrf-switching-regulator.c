// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA
#include "nrf52.h"

void RTC0_IRQHandler(void)
{
    NRF_RTC0->EVENTS_TICK = 0;
}

static void board_init(void)
{
    POWER_DCDCEN = 1;
}

int main(void)
{
    board_init();
    CLOCK_TASKS_LFCLKSTART = 1;
    NRF_RTC0->INTENSET = 1;
    NVIC_ISER0 = 1u << RTC0_IRQn;
    NRF_RTC0->TASKS_START = 1;
    for (;;) {
        __WFE(); // clean: full-power-regulator DCDC
    }
}
