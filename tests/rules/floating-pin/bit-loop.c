// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    for (uint8_t bit = 0; bit < 8; bit++) {
        DDRB |= (uint8_t)(1u << bit);
        if (bit < 6) {
            DDRC |= _BV(bit);
        }
        PORTD |= _BV(bit);
    }
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode(); // state: DDRB = 0b1111_1111
        // state@-1: DDRC = 0b0011_1111
        // state@-2: PORTD = 0b1111_1111
    }
}
