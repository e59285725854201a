#include "wakeup.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

#include "board.h"

static volatile uint8_t woken_by;

ISR(WDT_vect)
{
    woken_by |= WOKEN_BY_TIME;
}

ISR(PCINT2_vect)
{
    woken_by |= WOKEN_BY_BUTTON;
}

void wakeup_init(void)
{
    cli();
    wdt_reset();
    MCUSR = 0;
    WDTCSR |= _BV(WDCE) | _BV(WDE);
    WDTCSR = _BV(WDIE) | _BV(WDP3) | _BV(WDP0); /* every eight seconds, without a reset */

    PCMSK2 = _BV(PCINT18);
    PCICR = _BV(PCIE2);
    sei();
}

uint8_t wakeup_wait(void)
{
    uint8_t cause;

    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    while (!woken_by) {
        sleep_enable();
        sleep_bod_disable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    cause = woken_by;
    woken_by = 0;
    sei();
    return cause;
}
