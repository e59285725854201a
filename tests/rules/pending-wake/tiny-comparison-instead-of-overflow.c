// device: attiny1614
// The counter is set to raise its interrupt on a comparison, and the handler clears the flag of the overflow.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t seconds;

ISR(RTC_CNT_vect)
{
    RTC.INTFLAGS = RTC_OVF_bm;
    seconds++;
}

int main(void)
{
    RTC.PER = 32767;
    RTC.CMP = 16384;
    RTC.INTCTRL = RTC_CMP_bm;
    RTC.CTRLA = RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: pending-wake RTC.INTFLAGS.CMP proven error {{RTC_CNT_vect}}
        sleep_disable();
    }
}
