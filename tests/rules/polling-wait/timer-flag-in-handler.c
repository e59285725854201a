// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(INT0_vect)
{
    TCNT0 = 0;
    while (!(TIFR0 & _BV(TOV0))) { // finding: polling-wait TIFR0 {{interrupt handler}}
    }
}

int main(void)
{
    EIMSK = _BV(INT0);
    TCCR0B = _BV(CS00);
    sei();
    for (;;) {
        sleep_mode();
    }
}
