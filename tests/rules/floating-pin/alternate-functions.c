// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    // RXD and TXD belong to the serial port, PC3 to the converter.
    DDRB = 0xff;
    DDRC = 0x77;
    DDRD = 0xfc;
    UCSR0B = _BV(RXEN0) | _BV(TXEN0);
    ADMUX = _BV(REFS0) | 3;
    ADCSRA = _BV(ADEN) | _BV(ADSC);
    ADCSRA = 0;
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
