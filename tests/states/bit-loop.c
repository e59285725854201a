// device: attiny85
// flags: -DF_CPU=1000000UL
// Pins parked by a loop over bit numbers.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    for (uint8_t pin = 0; pin < 6; pin++) {
        if (pin == 1 || pin == 4)
            DDRB |= (1 << pin);
        else
            PORTB |= (1 << pin);
    }
    for (int8_t bit = 5; bit >= 0; bit--)
        if (bit & 1)
            DIDR0 |= 1 << bit;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    sleep_enable();
    sleep_cpu(); // state: DDRB = 0x12, PORTB = 0x2d
    for (;;)
        ;
}
