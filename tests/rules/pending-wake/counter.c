// device: avr128da48
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(RTC_CNT_vect)

int main(void)
{
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: pending-wake RTC.INTFLAGS.OVF proven
        sleep_disable();
    }
}
