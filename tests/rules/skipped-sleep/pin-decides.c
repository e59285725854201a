// device: atmega328p
// On the other passes a pin decides, too: it can change without a handler.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char sending;

ISR(USART_TX_vect) { sending = 0; }
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    UCSR0B = _BV(TXEN0) | _BV(TXCIE0);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        if (!sending && !(PIND & 4)) {
            sleep_mode(); // clean: skipped-sleep main()
            sending = 1;
            UDR0 = 'x';
        } else if (!(PIND & 8)) {
        }
    }
}
