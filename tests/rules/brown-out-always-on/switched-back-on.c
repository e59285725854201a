// device: avr128da48
// option: FUSE.BODCFG = 0x06
// The fuse has it look from time to time; the program asks for more on the first wake-up, for good.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define ALWAYS 0x01

ISR(RTC_PIT_vect)
{
    RTC.PITINTFLAGS = RTC_PI_bm;
    _PROTECTED_WRITE(BOD.CTRLA, ALWAYS);
}

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC8192_gc | RTC_PITEN_bm;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); // finding: brown-out-always-on BOD proven note {{BOD.CTRLA}}
        sleep_disable();
    }
}
