// device: avr128da48
// Zeros clear nothing here.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = 0; }

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC32768_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: pending-wake RTC.PITINTFLAGS.PI proven
        sleep_disable();
    }
}
