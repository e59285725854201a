// device: atmega328p
// flags: -DF_CPU=8000000UL
// Three loops over eight pins with different bodies: up, down, by shifting a mask.
#include <avr/io.h>
#include <avr/sleep.h>

static void park_port_c(void)
{
    for (uint8_t i = 0; i < 8; ++i) {
        DDRC &= ~_BV(i);
        PORTC |= _BV(i);
    }
}

int main(void)
{
    park_port_c();
    uint8_t mask = 0x80;
    while (mask) {
        if (mask & 0x3C)
            DDRD |= mask;
        mask >>= 1;
    }
    uint8_t i = 8;
    do {
        --i;
        PORTB = (PORTB << 1) | ((i % 3) == 0);
    } while (i != 0);
    set_sleep_mode(SLEEP_MODE_STANDBY);
    sleep_enable();
    for (;;) {
        sleep_cpu();
    }
}
