// device: atmega328p
// flags: -DF_CPU=8000000UL
// Switches with fall-through, ranges and a default.
#include <avr/io.h>
#include <avr/sleep.h>

static void mode(uint8_t pin, uint8_t kind)
{
    uint8_t mask = 1 << (pin & 7);
    volatile uint8_t *port;
    switch (pin) {
    case 0 ... 7:
        port = &PORTD;
        break;
    case 8 ... 13:
        port = &PORTB;
        break;
    default:
        port = &PORTC;
        mask = 1 << (pin - 14);
    }
    switch (kind) {
    case 3:
        *port |= mask;
        /* fall through */
    case 2:
        *(port - 1) |= mask;
        break;
    case 1:
        *port |= mask;
        break;
    case 0:
        break;
    }
}

int main(void)
{
    mode(0, 1);
    mode(1, 3);
    mode(7, 2);
    mode(8, 3);
    mode(13, 1);
    mode(14, 2);
    mode(19, 3);
    mode(2, 0);
    SMCR = SLEEP_MODE_PWR_DOWN | _BV(SE);
    for (;;)
        sleep_cpu(); // state: PORTD = 0x03, DDRD = 0x82, DDRB = 0x01, PORTB = 0x21, DDRC = 0x21, PORTC = 0x20
}
