#include "calendar.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <util/atomic.h>

#define SECONDS_OF_AN_OVERFLOW 8
#define MINUTES_OF_A_DAY 1440

static volatile uint8_t seconds;
static volatile uint16_t minutes;

ISR(TIMER2_OVF_vect)
{
    seconds += SECONDS_OF_AN_OVERFLOW;
    if (seconds >= 60) {
        seconds -= 60;
        if (++minutes == MINUTES_OF_A_DAY)
            minutes = 0;
    }
}

void calendar_init(void)
{
    power_timer2_enable();
    ASSR = _BV(AS2);
    TCCR2B = _BV(CS22) | _BV(CS21) | _BV(CS20);
    TIMSK2 = _BV(TOIE2);
    sei();
}

uint16_t calendar_minute(void)
{
    uint16_t now;

    ATOMIC_BLOCK(ATOMIC_RESTORESTATE)
    {
        now = minutes;
    }
    return now;
}
