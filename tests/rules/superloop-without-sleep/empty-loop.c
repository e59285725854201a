// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(TIMER0_OVF_vect)
{
    PORTB ^= 1;
}

int main(void)
{
    TCCR0B = _BV(CS02);
    TIMSK0 = _BV(TOIE0);
    sei();
    for (;;) // finding: superloop-without-sleep main()
        ;
}
