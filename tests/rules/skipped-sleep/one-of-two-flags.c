// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char sending;

ISR(USART_TX_vect) { sending = 0; }
EMPTY_INTERRUPT(WDT_vect)

static volatile unsigned char storing;

ISR(EE_READY_vect)
{
    storing = 0;
    EECR &= ~_BV(EERIE);
}

int main(void)
{
    UCSR0B = _BV(TXEN0) | _BV(TXCIE0);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    EECR |= _BV(EERIE);
    sei();
    for (;;) {
        if (!sending && !storing) { // finding: skipped-sleep main() proven
            sleep_mode();
            sending = storing = 1;
            UDR0 = 'x';
        }
    }
}
