#include "bell.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define BELL PIN0_bm /* of port C: the hammer's magnet */

static volatile uint8_t is_over;

ISR(TCC4_OVF_vect)
{
    is_over = 1;
}

/* A timer measures the stroke; the part sleeps meanwhile. */
void bell_ring(void)
{
    PR.PRPC &= (uint8_t)~PR_TC4_bm;
    TCC4.PER = 12500;
    TCC4.INTCTRLA = TC_OVFINTLVL_LO_gc;
    is_over = 0;
    PORTC.OUTSET = BELL;
    TCC4.CTRLA = TC_CLKSEL_DIV8_gc;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    cli();
    while (!is_over) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    PORTC.OUTCLR = BELL;
    TCC4.CTRLA = TC_CLKSEL_OFF_gc;
    TCC4.INTCTRLA = 0;
    PR.PRPC |= PR_TC4_bm;
}
