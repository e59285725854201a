// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER0_COMPA_vect)

int main(void)
{
    OCR0A = 50;
    TCCR0B = _BV(CS02); // finding: asleep-in-mode TIMER0 proven error
    TIMSK = _BV(OCIE0A);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
