#include "bucket.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <util/atomic.h>

/* The reed contact of the bucket pulls this pin low. */
#define REED PB2

static volatile uint16_t tips;

ISR(INT0_vect)
{
    /* A level can hold the part awake: only the end of the tip is waited for. */
    tips++;
    GIMSK &= (uint8_t)~_BV(INT0);
}

void bucket_init(void)
{
    DDRB &= (uint8_t)~_BV(REED);
    PORTB |= _BV(REED);
    MCUCR &= (uint8_t)~(_BV(ISC01) | _BV(ISC00));
    GIMSK |= _BV(INT0);
}

uint16_t bucket_count(void)
{
    uint16_t count;

    ATOMIC_BLOCK(ATOMIC_RESTORESTATE)
    {
        count = tips;
    }
    GIMSK |= _BV(INT0);
    return count;
}
