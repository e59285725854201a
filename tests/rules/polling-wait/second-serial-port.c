// device: atmega1284p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    UCSR1B = _BV(RXEN1);
    for (;;) {
        while (!(UCSR1A & _BV(RXC1))) { // finding: polling-wait UCSR1A {{USART1_RX_vect}}
        }
        PORTA = UDR1;
    }
}
