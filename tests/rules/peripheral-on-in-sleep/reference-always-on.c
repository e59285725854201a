// device: avr128da48
// A reference that is told to be always on draws in standby; on request it does not.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(RTC_CNT_vect)
{
    RTC.INTFLAGS = RTC_OVF_bm;
}

int main(void)
{
    VREF.ADC0REF = VREF_REFSEL_2V048_gc;
    VREF.ACREF = VREF_REFSEL_2V048_gc | VREF_ALWAYSON_bm; // finding: peripheral-on-in-sleep ACREF proven warning
    // clean: peripheral-on-in-sleep ADC0REF
    RTC.INTCTRL = RTC_OVF_bm;
    RTC.CTRLA = RTC_RUNSTDBY_bm | RTC_RTCEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_mode();
    }
}
