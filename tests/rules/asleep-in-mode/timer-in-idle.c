// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER0_OVF_vect)

int main(void)
{
    TCCR0B = _BV(CS02);
    TIMSK0 = _BV(TOIE0);
    // clean: asleep-in-mode TIMER0
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
