// device: attiny1614
// Each state has its own way of waiting.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static enum { ASLEEP, LIT } state;

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

static void wait(uint8_t mode)
{
    set_sleep_mode(mode);
    sleep_mode(); // clean: superloop-without-sleep main()
}

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
    PORTB.DIRSET = PIN0_bm;
    sei();
    for (;;) {
        switch (state) {
        case ASLEEP:
            wait(SLEEP_MODE_PWR_DOWN);
            state = LIT;
            break;
        case LIT:
            wait(SLEEP_MODE_STANDBY);
            PORTB.OUTTGL = PIN0_bm;
            state = ASLEEP;
            break;
        }
    }
}
