// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    UCSR0B = _BV(RXEN0);
    for (;;) {
        if (UCSR0A & _BV(RXC0)) {
            PORTB = UDR0;
        }
        sleep_mode();
    }
}
