#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "board.h"
#include "wakeup.h"

static volatile uint8_t is_second;
static volatile uint8_t is_overflow;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    is_second = 1;
}

ISR(PORTC_PORT_vect)
{
    PORTC.INTFLAGS = FLOAT_bm;
    is_overflow = 1;
}

void wakeup_init(void)
{
    RTC.CLKSEL = RTC_CLKSEL_1K_gc;
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
}

void wakeup_wait(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        cli();
        if (is_second || is_overflow) {
            break;
        }
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
    is_second = 0;
    sei();
}

uint8_t wakeup_overflow(void)
{
    uint8_t was = is_overflow;

    is_overflow = 0;
    return was;
}
