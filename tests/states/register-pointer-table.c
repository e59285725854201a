// device: atmega1284p
// flags: -DF_CPU=8000000UL
// A table of {direction, port, value} rows with register pointers.
#include <avr/io.h>
#include <avr/sleep.h>

struct row {
    volatile uint8_t *direction;
    volatile uint8_t *port;
    uint8_t outputs;
    uint8_t levels;
};

static const struct row rows[] = {
    {&DDRA, &PORTA, 0x00, 0xFF},
    {&DDRB, &PORTB, 0xB0, 0x4F},
    {&DDRC, &PORTC, 0xFF, 0x00},
    {&DDRD, &PORTD, 0xF0, 0x0E},
};

int main(void)
{
    for (unsigned i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        *rows[i].direction = rows[i].outputs;
        *rows[i].port = rows[i].levels;
    }
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRB = 0xb0, PORTB = 0x4f, PORTD = 0x0e
}
