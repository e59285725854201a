// device: avr128da48
// The counter once ran from the crystal; now it takes the internal oscillator, and the crystal goes on.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define XTAL_ENABLE 0x01
#define XTAL_RUNSTDBY 0x80

ISR(RTC_CNT_vect) { RTC.INTFLAGS = RTC_OVF_bm; }

static void crystal_start(void)
{
    _PROTECTED_WRITE(CLKCTRL.XOSC32KCTRLA, XTAL_RUNSTDBY | XTAL_ENABLE); // finding: oscillator-kept-on XOSC32K proven
}

int main(void)
{
    crystal_start();
    RTC.CLKSEL = RTC_CLKSEL_1K_gc;
    RTC.PER = 1023;
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_mode();
    }
}
