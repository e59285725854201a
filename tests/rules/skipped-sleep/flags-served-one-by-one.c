// device: atmega328p
// Where the sleep is skipped there is work: the two tests behind it say the same.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char first, second;

ISR(WDT_vect) { first = 1; }
ISR(USART_TX_vect) { second = 1; }

int main(void)
{
    UCSR0B = _BV(TXEN0) | _BV(TXCIE0);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        if (!(first | second))
            sleep_mode(); // clean: skipped-sleep main()
        if (first) {
            first = 0;
            PORTB ^= 1;
        }
        if (second) {
            second = 0;
            PORTB ^= 2;
        }
    }
}
