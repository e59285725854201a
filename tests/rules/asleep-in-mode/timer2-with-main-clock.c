// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// In this mode timer 2 runs from its own crystal only.
EMPTY_INTERRUPT(TIMER2_OVF_vect)

int main(void)
{
    TCCR2B = _BV(CS22) | _BV(CS20); // finding: asleep-in-mode TIMER2 proven error
    TIMSK2 = _BV(TOIE2);
    set_sleep_mode(SLEEP_MODE_ADC);
    sei();
    for (;;) {
        sleep_mode();
    }
}
