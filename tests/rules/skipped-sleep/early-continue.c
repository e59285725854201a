// device: atmega328p
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
        if (sending) // finding: skipped-sleep main() proven
            continue;
        sleep_mode();
        sending = 1;
        UDR0 = 'x';
    }
}
