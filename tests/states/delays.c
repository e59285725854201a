// device: attiny85
// flags: -DF_CPU=1000000UL
// Delays between the steps of starting a sensor.
#include <avr/io.h>
#include <avr/sleep.h>
#include <util/delay.h>

int main(void)
{
    DDRB |= _BV(4);
    PORTB |= _BV(4);
    _delay_ms(5);
    PORTB |= _BV(2);
    _delay_us(50);
    for (uint8_t i = 0; i < 10; i++) {
        PORTB ^= _BV(0);
        _delay_us(20);
    }
    for (volatile uint16_t wait = 0; wait < 500; wait++)
        ;
    PORTB &= ~_BV(4);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: PORTB = 0x04, DDRB = 0x10
}
