// A write to the power-off register is a sleep of its own, which ends in a reset; an event without a vector ends the other sleeps.
#include "part.h"

#define PIN_CTRL0 (*(volatile uint32_t *)0x40031000UL)
#define POWER_OFF (*(volatile uint32_t *)0x40033500UL)

int main(void)
{
    APBENR = APBENR_PWR;
    PIN_CTRL0 = 1u << 8;
    SCB_SCR = SCR_SLEEPDEEP;
    wait_for_interrupt(); // state: POWER.OFF = 0
    POWER_OFF = 0;
    PIN_CTRL0 = 1u << 8 | 3u << 2;
    POWER_OFF = 1; // state: PIN.CTRL[0] = 0x10C, POWER.OFF = 1
    for (;;)
        wait_for_interrupt(); // no point here
}
