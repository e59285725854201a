#include "look.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

EMPTY_INTERRUPT(WDT_vect)

void look_init(void)
{
    wdt_reset();
    MCUSR = 0;
    WDTCR = _BV(WDCE) | _BV(WDE);
    WDTCR = _BV(WDTIE) | _BV(WDP3);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
}

void look_wait(void)
{
    sleep_enable();
    sleep_cpu();
    sleep_disable();
}

uint8_t look_is_wet(void)
{
    return !(PINB & _BV(PB3));
}
