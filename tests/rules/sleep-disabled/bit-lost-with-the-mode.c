// device: avr128da48
// The mode is chosen by a plain write after the bit was set: it takes the bit away.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC8192_gc | RTC_PITEN_bm;
    sei();
    for (;;) {
        sleep_enable();
        SLPCTRL.CTRLA = SLEEP_MODE_PWR_DOWN;
        sleep_cpu(); // finding: sleep-disabled SLEEP proven error
    }
}
