// device: atmega4809
// What the counter runs from may stay on; the other oscillator's run bit goes with the power-down mode.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_CNT_vect) { RTC.INTFLAGS = RTC_OVF_bm; }

int main(void)
{
    _PROTECTED_WRITE(CLKCTRL.OSC32KCTRLA, CLKCTRL_RUNSTDBY_bm);
    RTC.PER = 32767;
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_mode(); // clean: oscillator-kept-on OSCULP32K OSC20M
    }
}
