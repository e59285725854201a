// device: atmega1284p
// flags: -DF_CPU=8000000UL
// A little recursion, static locals and a variable number of arguments.
#include <avr/io.h>
#include <avr/sleep.h>
#include <stdarg.h>

static uint8_t spread(uint8_t bits, uint8_t depth)
{
    return depth == 0 ? bits : spread(bits | bits << 2, depth - 1);
}

static uint8_t next_bit(void)
{
    static uint8_t bit = 0x80;
    uint8_t result = bit;
    bit >>= 2;
    return result;
}

static void outputs(volatile uint8_t *direction, int count, ...)
{
    va_list bits;
    va_start(bits, count);
    while (count-- > 0)
        *direction |= _BV(va_arg(bits, int));
    va_end(bits);
}

int main(void)
{
    DDRA = spread(1, 3);
    DDRB |= next_bit();
    DDRB |= next_bit();
    PORTB = next_bit();
    outputs(&DDRC, 3, 1, 4, 7);
    PORTD = 0xFF;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRA = 0x55, DDRB = 0xa0, PORTB = 0x08, DDRC = 0x92
}
