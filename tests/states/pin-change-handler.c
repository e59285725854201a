// device: attiny85
// flags: -DF_CPU=8000000UL
// A door contact wakes the part; the handler only notes it.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t opened;

ISR(PCINT0_vect)
{
    opened = !(PINB & _BV(PB3));
}

int main(void)
{
    DDRB = _BV(PB0) | _BV(PB1);
    PORTB = _BV(PB2) | _BV(PB3) | _BV(PB4);
    GIMSK |= _BV(PCIE);
    PCMSK |= _BV(PCINT3);
    ADCSRA = 0;
    MCUCR = (MCUCR & ~(_BV(SM0))) | _BV(SM1);
    sei();
    while (1) {
        MCUCR |= _BV(SE);
        sleep_cpu();
        MCUCR &= ~_BV(SE);
        if (opened)
            PORTB |= _BV(PB0);
        else
            PORTB &= ~_BV(PB0);
    }
}
