// device: atmega328p
// flags: -DF_CPU=8000000UL
// Helpers that take pointers to registers.
#include <avr/io.h>
#include <avr/sleep.h>

static void set_bits(volatile uint8_t *reg, uint8_t bits) { *reg |= bits; }
static void clear_bits(volatile uint8_t *reg, uint8_t bits) { *reg &= ~bits; }

__attribute__((noinline)) static void make_output(volatile uint8_t *port, uint8_t bit, uint8_t high)
{
    if (high)
        set_bits(port, 1 << bit);
    else
        clear_bits(port, 1 << bit);
    set_bits(port - 1, 1 << bit);
}

__attribute__((noinline)) static void make_input(volatile uint8_t *port, uint8_t bit, uint8_t pull)
{
    clear_bits(port - 1, 1 << bit);
    if (pull)
        set_bits(port, 1 << bit);
    else
        clear_bits(port, 1 << bit);
}

int main(void)
{
    make_output(&PORTB, 0, 1);
    make_output(&PORTB, 1, 0);
    make_input(&PORTC, 3, 1);
    make_input(&PORTC, 4, 0);
    make_output(&PORTD, 7, 1);
    make_input(&PORTD, 7, 0);
    set_bits(&PRR, _BV(PRADC));
    set_bits(&SMCR, _BV(SM1));
    set_bits(&SMCR, _BV(SE));
    for (;;)
        __asm__ __volatile__("sleep" ::: "memory"); // state: PORTB = 0x01, DDRB = 0x03, PORTC = 0x08, DDRD = 0
}
