// device: attiny827
// Without the signature the write that was to put the clock out does nothing.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define CLKOUT 0x80

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

int main(void)
{
    CLKCTRL.MCLKCTRLA |= CLKOUT;
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC1024_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode(); // clean: clock-output-on CLKOUT
    }
}
