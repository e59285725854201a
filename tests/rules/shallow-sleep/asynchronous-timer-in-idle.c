// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER2_OVF_vect)

int main(void)
{
    ASSR = _BV(AS2);
    TCCR2B = _BV(CS22) | _BV(CS20);
    TIMSK2 = _BV(TOIE2);
    SMCR = 0; // finding: shallow-sleep proven {{power-save}}
    sei();
    for (;;) {
        sleep_mode();
    }
}
