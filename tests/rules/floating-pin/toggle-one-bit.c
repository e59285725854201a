// device: atmega328p
// One bit set in a PIN register is one instruction in the image: it toggles that output and leaves the pulls alone.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(TIMER2_OVF_vect)

int main(void)
{
    DDRB = _BV(PB5);
    PORTB = (uint8_t)~_BV(PB5);
    DDRC = 0x7f;
    DDRD = 0xff;
    TIMSK2 = _BV(TOIE2);
    TCCR2B = _BV(CS22) | _BV(CS21) | _BV(CS20);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        PINB |= _BV(PB5);
        sleep_mode(); // clean: floating-pin PB0
    }
}
