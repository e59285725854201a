// device: attiny1614
// The periodic timer goes on in the deepest mode; the counter beside it does not.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
}

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY); // finding: shallow-sleep proven warning {{power-down}}
    sei();
    for (;;) {
        // Data sheet, Wake-Up Time: 10 µs from either, so nothing is lost.
        sleep_mode(); // related: shallow-sleep {{waking from power-down takes 10 µs, from standby 10 µs}}
    }
}
