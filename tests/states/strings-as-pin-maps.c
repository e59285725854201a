// device: atmega328p
// flags: -DF_CPU=8000000UL
// A pin map written as text: o output, O output high, u pulled up, dot input.
#include <avr/io.h>
#include <avr/sleep.h>
#include <string.h>

static void port_map(const char *map, volatile uint8_t *direction, volatile uint8_t *port)
{
    uint8_t bit = strlen(map);
    while (*map) {
        bit--;
        switch (*map++) {
        case 'O':
            *port |= 1 << bit;
            /* fall through */
        case 'o':
            *direction |= 1 << bit;
            break;
        case 'u':
            *port |= 1 << bit;
            break;
        }
    }
}

int main(void)
{
    port_map("..oOuu.o", &DDRB, &PORTB);
    port_map("uuuu", &DDRC, &PORTC);
    port_map("Oooo....", &DDRD, &PORTD);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_enable();
    for (;;)
        sleep_cpu(); // state: DDRB = 0x31, PORTB = 0x1c, PORTC = 0x0f, DDRC = 0, DDRD = 0xf0, PORTD = 0x80
}
