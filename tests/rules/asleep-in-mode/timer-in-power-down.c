// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER0_OVF_vect)

int main(void)
{
    TCCR0B = _BV(CS02); // finding: asleep-in-mode TIMER0 proven error {{TIMER0_OVF_vect}}
    TIMSK0 = _BV(TOIE0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_mode();
    }
}
