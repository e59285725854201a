// device: atmega328p
// flags: -DF_CPU=8000000UL
// Writing ones to PINx inverts PORTx.
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xFF;
    PORTB = 0x0F;
    PINB = 0x3C;
    PINB = _BV(0);
    for (uint8_t i = 0; i < 5; i++)
        PIND = 0x81;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: PORTB = 0x32, PORTD = 0x81
}
