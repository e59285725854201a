#include "power.h"

#include "chip.h"

#define TICKS_PER_REPORT 112 /* of eight seconds: about a quarter of an hour */

volatile uint8_t report_due = 1;

static uint8_t ticks;

ISR(WDT_vect)
{
    if (++ticks >= TICKS_PER_REPORT)
    {
        ticks = 0;
        report_due = 1;
    }
}

ISR(PCINT2_vect)
{
    report_due = 1;
}

void wake_timer_start(void)
{
    watchdog_restart();
    MCUSR &= (uint8_t)~(1 << WDRF);
    WDTCSR |= (1 << WDCE) | (1 << WDE);
    WDTCSR = (1 << WDIE) | (1 << WDP3) | (1 << WDP0);

    PCMSK2 = 1 << PCINT18;
    PCICR = 1 << PCIE2;
}

void rest(void)
{
    SMCR = (1 << SM1) | (1 << SE);
    sleep_now();
    SMCR = 0;
}

void doze(void)
{
    SMCR = 0;
    sleep_now();
}
