#include "ticks.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

static volatile uint8_t is_due;

ISR(WDT_vect)
{
    is_due = 1;
}

void ticks_init(void)
{
    cli();
    wdt_reset();
    MCUSR = 0;
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP1); /* sixteen times a second */
    sei();
}

void ticks_wait(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    while (!is_due) {
        sleep_enable();
        sleep_bod_disable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    is_due = 0;
    sei();
}
