// device: atmega328p
// What keeps the CPU from sleeping is work, which comes to an end.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char waiting;

ISR(WDT_vect) { waiting++; }

int main(void)
{
    UCSR0B = _BV(TXEN0) | _BV(TXCIE0);
    WDTCSR |= _BV(WDIE);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        if (waiting) {
            waiting--;
            PORTB ^= 1;
        } else {
            sleep_mode(); // clean: skipped-sleep main()
        }
    }
}
