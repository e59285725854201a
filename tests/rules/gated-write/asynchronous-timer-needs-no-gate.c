// device: atmega1284p
// With the watch crystal the timer's registers are within reach whatever its power-reduction bit says.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER2_OVF_vect)

int main(void)
{
    ASSR = _BV(AS2);
    PRR0 = _BV(PRTIM2) | _BV(PRTWI) | _BV(PRSPI) | _BV(PRADC);
    TCCR2B = _BV(CS22) | _BV(CS20);
    TIMSK2 = _BV(TOIE2);
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
