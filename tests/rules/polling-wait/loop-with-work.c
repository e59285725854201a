// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

// Something is done on each turn: no bare wait.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    uint8_t turns = 0;
    TCCR0B = _BV(CS00);
    for (;;) {
        while (!(TIFR0 & _BV(TOV0))) {
            PORTB = turns++;
        }
        sleep_mode();
    }
}
