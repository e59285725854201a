// device: attiny85
// flags: -DF_CPU=8000000UL
// Falling edges on INT0 count pulses of a rain gauge while the timer blinks.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint16_t pulses;

ISR(INT0_vect)
{
    pulses++;
}

ISR(TIMER0_COMPA_vect)
{
    PINB = _BV(PINB1);
}

int main(void)
{
    DDRB = _BV(1) | _BV(3);
    PORTB = _BV(2) | _BV(0) | _BV(4);
    MCUCR = _BV(ISC01);
    GIMSK = _BV(INT0);
    TCCR0A = _BV(WGM01);
    OCR0A = 199;
    TCCR0B = _BV(CS02) | _BV(CS00);
    TIMSK = _BV(OCIE0A);
    sei();
    for (;;) {
        sleep_mode(); // state: PORTB = 0b0001_01?1, DDRB = 0x0a, TCCR0A = 0x02, TIMSK = 0x10
    }
}
