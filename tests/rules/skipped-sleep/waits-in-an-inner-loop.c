// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char sending;

ISR(WDT_vect) { sending = 1; }

int main(void)
{
    UCSR0B = _BV(TXEN0) | _BV(TXCIE0);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        while (!sending)
            sleep_mode(); // clean: skipped-sleep main()
        sending = 0;
        PORTB ^= 1;
    }
}
