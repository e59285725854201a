// device: attiny1614
// The counter runs in standby at most.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_CNT_vect)
{
    RTC.INTFLAGS = RTC_OVF_bm;
}

int main(void)
{
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    // clean: shallow-sleep standby
    for (;;) {
        sleep_mode();
    }
}
