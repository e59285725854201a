#include "horn.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "pins.h"

static volatile uint8_t is_over;

ISR(WDT_vect)
{
    is_over = 1;
}

static void watchdog(uint8_t setting)
{
    cli();
    MCUSR &= (uint8_t)~_BV(WDRF);
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = setting;
    sei();
}

/* The driver makes the tone by itself; the watchdog tells when four seconds are over. */
void horn_sound(void)
{
    is_over = 0;
    watchdog(_BV(WDIE) | _BV(WDP3));
    PORTC |= _BV(HORN);
    cli();
    while (!is_over) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    PORTC &= (uint8_t)~_BV(HORN);
    watchdog(0);
}
