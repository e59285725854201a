#include "pause.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

static volatile uint8_t is_over;

ISR(WDT_vect)
{
    is_over = 1;
}

void pause_init(void)
{
    cli();
    wdt_reset();
    WDTCR |= _BV(WDCE) | _BV(WDE);
    WDTCR = _BV(WDTIE) | _BV(WDP3);
    sei();
}

void pause(void)
{
    is_over = 0;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    while (!is_over) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
}
