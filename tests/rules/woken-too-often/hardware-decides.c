// device: attiny1614
// What a wake-up does hangs on a pin: nobody can tell how many go by.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t count;

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    count++;
}

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm; // clean: woken-too-often PIT
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
        if (PORTA.IN & PIN3_bm)
            PORTA.OUTTGL = PIN2_bm;
        else if (count >= 32)
            count = 0;
    }
}
