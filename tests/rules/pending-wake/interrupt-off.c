// device: avr128da48
// The handler that clears nothing never comes.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(PORTD_PORT_vect)
ISR(RTC_PIT_vect) { RTC.PITINTFLAGS = RTC_PI_bm; }

int main(void)
{
    RTC.PITINTCTRL = RTC_PI_bm;
    RTC.PITCTRLA = RTC_PERIOD_CYC32768_gc | RTC_PITEN_bm;
    PORTD.PIN5CTRL = PORT_PULLUPEN_bm;
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sei();
    for (;;) {
        sleep_enable();
        sleep_cpu(); 
        sleep_disable();
    }
}
