#include "wake.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/wdt.h>

static volatile uint8_t causes;

ISR(PCINT_D_vect)
{
    if ((PIND & _BV(KEY)) == 0)
        causes |= WOKEN_BY_KEY;
    if ((PIND & _BV(SERVICE_PRESENT)) == 0)
        causes |= WOKEN_BY_SERVICE;
}

ISR(WDT_OVERFLOW_vect)
{
    causes |= WOKEN_BY_TIME;
}

void wake_init(void)
{
    MCUSR = 0;
    wake_tick(0);
    PCMSK2 = _BV(PCINT13) | _BV(PCINT14);
    GIMSK = _BV(PCIE2);
    sei();
}

void wake_tick(uint8_t wanted)
{
    cli();
    wdt_reset();
    WDTCR |= _BV(WDCE) | _BV(WDE);
    WDTCR = wanted ? _BV(WDIE) | _BV(WDP3) | _BV(WDP0) : 0;
    sei();
}

uint8_t wake_wait(void)
{
    uint8_t came;

    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    while (!causes) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    came = causes;
    causes = 0;
    sei();
    return came;
}
