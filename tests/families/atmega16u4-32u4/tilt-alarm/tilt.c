#include "tilt.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "pins.h"

static volatile uint8_t has_tilted;

/* The low level, which needs no clock; it stays low for a while, so it is let through once only. */
ISR(INT0_vect)
{
    EIMSK = 0;
    has_tilted = 1;
}

void tilt_init(void)
{
    EICRA = 0;
}

void tilt_wait(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    has_tilted = 0;
    EIMSK = _BV(INT0);
    cli();
    while (!has_tilted) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
}
