/* Going to sleep, and the watchdog timer that ends it every eight seconds. */
#ifndef POWER_H
#define POWER_H

#include <stdint.h>

#include "chip.h"

/* Only the CPU stops: the serial port goes on. */
#define LIGHT_SLEEP 0
/* The analog converter goes on. */
#define QUIET_SLEEP (1 << SM0)
/* Only the wake timer and pin changes go on. */
#define DEEP_SLEEP (1 << SM1)

/*
 * Sleeps until an interrupt, unless one has set the flag by now. The instruction after the one that lets interrupts in runs
 * before any of them: none can slip in between and leave the CPU asleep with its flag set.
 */
#define SLEEP_UNLESS(flag, mode)                                                                                       \
    do                                                                                                                 \
    {                                                                                                                  \
        interrupts_off();                                                                                              \
        SMCR = (mode) | (1 << SE);                                                                                     \
        if (flag)                                                                                                      \
        {                                                                                                              \
            interrupts_on();                                                                                           \
        }                                                                                                              \
        else                                                                                                           \
        {                                                                                                              \
            interrupts_on();                                                                                           \
            sleep_now();                                                                                               \
        }                                                                                                              \
        SMCR = 0;                                                                                                      \
    } while (0)

extern volatile uint8_t report_due;

/* Counts wake-timer ticks since reset. */
extern volatile uint8_t ticks_seen;

/* Set by a change of the bridge converter's data line, which says that a weight is ready. */
extern volatile uint8_t bridge_ready;

void wake_timer_start(void);
void bridge_watch(uint8_t watched);

#endif
