// device: atmega328p
// flags: -DF_CPU=1000000UL
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

EMPTY_INTERRUPT(WDT_vect)

int main(void)
{
    WDTCSR |= _BV(WDIE);
    sei();
    for (;;) {
        _delay_us(900);
        _delay_us(900); // each counts by itself
        sleep_mode();
    }
}
