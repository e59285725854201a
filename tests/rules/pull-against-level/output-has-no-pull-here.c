// device: attiny1614
// board: PB2: { pull: up, ohms: 10000 }
// On this family the pull-up works on inputs only: driving the pin low wastes nothing in it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

int main(void)
{
    PORTB.PIN2CTRL = PORT_PULLUPEN_bm;
    PORTB.PIN3CTRL = PORT_PULLUPEN_bm;
    PORTB.OUTCLR = PIN2_bm | PIN3_bm;
    PORTB.DIRSET = PIN2_bm | PIN3_bm;
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode(); // clean: pull-against-level PB2
    }
}
