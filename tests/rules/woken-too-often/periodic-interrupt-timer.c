// device: avr128da48
// The periodic interrupt timer at a quarter of a second, and four counted.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static uint8_t quarter;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    quarter++;
}

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC8192_gc | RTC_PITEN_bm; // finding: woken-too-often PIT proven {{no counting}}
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
        if (quarter >= 4) {
            quarter = 0;
            PORTA.OUTTGL = PIN2_bm;
        }
    }
}
