// device: atmega328p
// flags: -DF_CPU=8000000UL
// Constant arguments through four levels of driver code.
#include <avr/io.h>
#include <avr/sleep.h>

struct port {
    volatile uint8_t *in, *direction, *out;
};

static const struct port ports[3] = {
    {&PINB, &DDRB, &PORTB}, {&PINC, &DDRC, &PORTC}, {&PIND, &DDRD, &PORTD}};

enum { PULL = 1, DRIVE = 2, HIGH = 4 };

static void write_bit(volatile uint8_t *reg, uint8_t bit, _Bool on)
{
    *reg = on ? *reg | (uint8_t)(1 << bit) : *reg & (uint8_t)~(1 << bit);
}

static void apply(const struct port *port, uint8_t bit, uint8_t flags)
{
    write_bit(port->out, bit, (flags & (PULL | HIGH)) != 0);
    write_bit(port->direction, bit, !!(flags & DRIVE));
}

static void configure(uint8_t pin, uint8_t flags)
{
    apply(&ports[pin >> 4], pin & 0x0F, flags);
}

static void configure_all(const uint8_t *pins, uint8_t count, uint8_t flags)
{
    while (count--)
        configure(*pins++, flags);
}

int main(void)
{
    static const uint8_t keys[] = {0x02, 0x13, 0x24};
    static const uint8_t lamps[] = {0x05, 0x10, 0x27, 0x26};
    configure_all(keys, 3, PULL);
    configure_all(lamps, 4, DRIVE);
    configure_all(lamps + 1, 2, DRIVE | HIGH);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: PORTB = 0x04, DDRB = 0x20, PORTC = 0x09, DDRC = 0x01, PORTD = 0x90, DDRD = 0xc0
}
