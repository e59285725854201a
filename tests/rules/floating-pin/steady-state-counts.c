// device: atmega328p
// The handler lets the pins float from the first wake-up on: on every later pass they do.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(TIMER2_COMPA_vect)
{
    PORTD &= ~_BV(PD3);
}

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xf7;
    PORTD = 0x08;
    TCCR2A = _BV(WGM21);
    TCCR2B = _BV(CS22);
    TIMSK2 = _BV(OCIE2A);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
    // finding@-17: floating-pin PD3 proven warning
}
