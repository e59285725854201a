#include "power.h"

#include "board.h"

#define TICKS_PER_REPORT 112 /* of eight seconds: about a quarter of an hour */

volatile uint8_t report_due = 1;
volatile uint8_t ticks_seen;
volatile uint8_t bridge_ready;

static uint8_t ticks;

ISR(WDT_vect)
{
    ticks_seen++;
    if (++ticks >= TICKS_PER_REPORT)
    {
        ticks = 0;
        report_due = 1;
    }
}

ISR(PCINT2_vect)
{
    if (PCMSK2 & (1 << PCINT20))
        bridge_ready = 1;
    else
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

void bridge_watch(uint8_t watched)
{
    bridge_ready = 0;
    PCMSK2 = watched ? 1 << PCINT20 : 1 << PCINT18;
}
