// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER1_OVF_vect)

int main(void)
{
    ACSR = _BV(ACD);
    TCCR1B = _BV(CS10);
    TIMSK1 = _BV(TOIE1);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
