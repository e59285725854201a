// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

// A counted loop that does something is no wait.
EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        for (uint16_t i = 0; i < 5000; i++) {
            PORTB ^= _BV(PB0);
        }
        sleep_mode();
    }
}
