// device: avr128da48
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC8192_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
