#include "hours.h"

#include <avr/interrupt.h>
#include <avr/io.h>

/* The crystal's eighth power of two, divided by 1024, overflows every eight seconds. */
#define OVERFLOWS_OF_AN_HOUR 450

static volatile uint16_t overflows;
static volatile uint8_t hour;

ISR(TIMER2_OVF_vect)
{
    if (++overflows == OVERFLOWS_OF_AN_HOUR) {
        overflows = 0;
        hour = (uint8_t)((hour + 1) % 24);
    }
}

void hours_init(void)
{
    ASSR = _BV(AS2);
    TCCR2A = 0;
    TCCR2B = _BV(CS22) | _BV(CS21) | _BV(CS20);
    TIMSK2 = _BV(TOIE2);
}

uint8_t hours_now(void)
{
    return hour;
}
