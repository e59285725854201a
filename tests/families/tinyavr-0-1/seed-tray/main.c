// device: attiny1614
// flags: -DF_CPU=3333333UL -Wall
// Warms a tray of seedlings: a counter in standby decides when to look, the heater's switch stays as it is while the part sleeps.
#include <avr/interrupt.h>
#include <avr/sleep.h>

#include "tray.h"

static volatile uint8_t is_due;

ISR(RTC_CNT_vect)
{
    RTC.INTFLAGS = RTC_OVF_bm;
    is_due = 1;
}

/* The counter, unlike the periodic timer, counts minutes: it must be told to go on in standby. */
static void clock_init(void)
{
    RTC.CLKSEL = RTC_CLKSEL_1K_gc;
    RTC.PER = 59;
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_PRESCALER_DIV1024_gc | RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
}

int main(void)
{
    tray_init();
    clock_init();
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();

    for (;;) {
        cli();
        if (!is_due) {
            sleep_enable();
            sei();
            sleep_cpu();
            sleep_disable();
        }
        sei();
        if (is_due) {
            is_due = 0;
            tray_look();
        }
    }
}
