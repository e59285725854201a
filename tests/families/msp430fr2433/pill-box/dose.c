#include "dose.h"

#include <stdint.h>

#include "box.h"

/* The oscillator makes some 10 kHz: divided by a thousand, forty counts are four seconds. */
#define COUNTS 40
#define TICKS_BETWEEN_DOSES 5400

static volatile uint16_t ticks;
static volatile bool has_ticked;

void dose_init(void)
{
    RTCMOD = COUNTS - 1;
    RTCCTL = RTCSS__VLOCLK | RTCPS__1000 | RTCSR | RTCIE;
}

void dose_wait(void)
{
    __disable_interrupt();
    while (!has_ticked) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    has_ticked = false;
    __enable_interrupt();
}

bool dose_is_due(void)
{
    bool is_due;

    __disable_interrupt();
    is_due = ticks >= TICKS_BETWEEN_DOSES;
    __enable_interrupt();
    return is_due;
}

void dose_taken(void)
{
    __disable_interrupt();
    ticks = 0;
    __enable_interrupt();
}

__attribute__((interrupt(RTC_VECTOR))) void on_tick(void)
{
    if (RTCIV == RTCIV_RTCIF) {
        if (ticks < UINT16_MAX)
            ticks++;
        has_ticked = true;
    }
    __bic_SR_register_on_exit(LPM3_bits);
}
