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
    _delay_ms(9);
    __builtin_avr_delay_cycles(5000);
    for (volatile uint8_t i = 0; i < 200; i++) {
    }
    for (;;) {
        sleep_mode();
    }
}
