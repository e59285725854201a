#include "tick.h"
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <stddef.h>

static tick_callback_t subscriber;

ISR(TIMER0_COMPA_vect)
{
    if (subscriber != NULL)
        subscriber();
}

void tick_subscribe(tick_callback_t callback)
{
    subscriber = callback;
}

void tick_start(uint8_t top)
{
    TCCR0A = 1 << WGM01;
    OCR0A = top;
    TIMSK |= 1 << OCIE0A;
    TCCR0B = 1 << CS01 | 1 << CS00;
}

void tick_wait(void)
{
    set_sleep_mode(SLEEP_MODE_IDLE);
    sleep_mode(); // state: OCR0A = 124, TIMSK = 0x10, DDRB = 0x02, PORTB = 0b0001_11?1
}
