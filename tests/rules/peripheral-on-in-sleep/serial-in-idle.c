// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    ACSR = _BV(ACD);
    WDTCSR |= _BV(WDIE);
    UCSR0B = _BV(TXEN0); // finding: peripheral-on-in-sleep USART0 proven
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
