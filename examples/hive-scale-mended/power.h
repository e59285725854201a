/* Going to sleep, and the watchdog timer that ends it every eight seconds. */
#ifndef POWER_H
#define POWER_H

#include <stdint.h>

enum depth
{
    /* Only the CPU stops: the serial port goes on. */
    LIGHT,
    /* The analog converter goes on. */
    QUIET,
    /* Only the wake timer and pin changes go on. */
    DEEP,
};

extern volatile uint8_t report_due;

/* Counts wake-timer ticks since reset. */
extern volatile uint8_t ticks_seen;

/* Set by a change of the bridge converter's data line, which says that a weight is ready. */
extern volatile uint8_t bridge_ready;

void wake_timer_start(void);
void bridge_watch(uint8_t watched);

/* Sleeps until an interrupt, unless one has set the flag by now. */
void sleep_unless(volatile uint8_t *flag, enum depth depth);

#endif
