#include "countdown.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

static volatile uint16_t seconds_left;

ISR(WDT_vect)
{
    if (seconds_left > 0)
        seconds_left--;
}

static void tick(uint8_t setting)
{
    cli();
    wdt_reset();
    WDTCR |= _BV(WDCE) | _BV(WDE);
    WDTCR = setting;
    sei();
}

void countdown_init(void)
{
    MCUSR = 0;
    tick(0);
}

void countdown_add_minute(void)
{
    cli();
    seconds_left += 60;
    sei();
    tick(_BV(WDIE) | _BV(WDP2) | _BV(WDP1));
}

uint8_t countdown_minutes(void)
{
    uint16_t seconds;

    cli();
    seconds = seconds_left;
    sei();
    if (seconds == 0)
        tick(0);
    return (uint8_t)((seconds + 59) / 60);
}

void countdown_rest(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_mode();
}
