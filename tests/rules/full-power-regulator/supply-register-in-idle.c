// device: avr128da48
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC32768_gc | RTC_PITEN_bm;
    _PROTECTED_WRITE(SLPCTRL.VREGCTRL, SLPCTRL_PMODE_FULL_gc);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); 
        sleep_disable();
    }
}
