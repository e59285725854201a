// device: nrf52832_xxaa
// flags: -DNRF52832_XXAA -Wall
// A bell at a garden gate: the button wakes it, a horn sounds for half a second, and after a quiet week it powers down until the next press.
#include "bell.h"

#define HALF_SECOND 4u
#define WEEK (7u * 24u * 3600u * 8u)

static void power_down(void)
{
    NRF_CLOCK->TASKS_LFCLKSTOP = 1;
    NRF_POWER->SYSTEMOFF = POWER_SYSTEMOFF_SYSTEMOFF_Enter;
    for (;;)
        ;
}

int main(void)
{
    uint32_t answered = 0;

    NRF_POWER->DCDCEN = POWER_DCDCEN_DCDCEN_Enabled;
    bell_prepare();
    ticker_prepare();
    button_prepare();
    ticker_start(WEEK);
    for (;;) {
        __WFE();
        if (button_presses() != answered) {
            answered = button_presses();
            bell_ring();
            ticker_start(HALF_SECOND);
            while (!ticker_is_over())
                __WFE();
            bell_quiet();
            ticker_start(WEEK);
        } else if (ticker_is_over()) {
            power_down();
        }
    }
}
