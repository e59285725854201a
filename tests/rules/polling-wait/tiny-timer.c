// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    TCCR0B = _BV(CS01);
    for (;;) {
        while (bit_is_clear(TIFR, TOV0)) { // finding: polling-wait TIFR
        }
        TIFR = _BV(TOV0);
        PORTB ^= 1;
    }
}
