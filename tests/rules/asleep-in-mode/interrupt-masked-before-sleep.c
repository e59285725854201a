// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(USART_RX_vect)
{
    PORTB = UDR0;
}
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    UCSR0B = _BV(RXEN0) | _BV(RXCIE0);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        UCSR0B = 0;
        sleep_mode();
        UCSR0B = _BV(RXEN0) | _BV(RXCIE0);
    }
}
