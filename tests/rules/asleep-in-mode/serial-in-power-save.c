// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(USART_RX_vect)
{
    PORTB = UDR0;
}

int main(void)
{
    UCSR0B = _BV(RXEN0) | _BV(RXCIE0); // finding: asleep-in-mode USART0 proven error
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
