// device: attiny85
// flags: -DF_CPU=8000000UL
// A tick module calls back whoever has subscribed.
#include "tick.h"
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static uint8_t count;

static void blink(void)
{
    if (++count == 5) {
        count = 0;
        PORTB |= _BV(PB1);
    } else {
        PORTB &= ~_BV(PB1);
    }
}

int main(void)
{
    DDRB = _BV(PB1);
    PORTB = _BV(PB0) | _BV(PB2) | _BV(PB3) | _BV(PB4);
    tick_subscribe(blink);
    tick_start(124);
    sei();
    for (;;)
        tick_wait();
}
