// device: avr128da48
// Seven seconds by the periodic interrupt timer: its periods are powers of two, none of which makes up seven.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t seconds;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    seconds++;
}

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC32768_gc | RTC_PITEN_bm; // clean: woken-too-often PIT
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
        if (seconds == 7) {
            seconds = 0;
            PORTA.OUTTGL = PIN2_bm;
        }
    }
}
