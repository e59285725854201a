// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

struct port_setup {
    volatile uint8_t *direction;
    volatile uint8_t *port;
    uint8_t inputs;
};

static const struct port_setup ports[] = {
    { &DDRB, &PORTB, 0x0f },
    { &DDRC, &PORTC, 0x40 },
    { &DDRD, &PORTD, 0xff },
};

int main(void)
{
    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        *ports[i].direction &= (uint8_t)~ports[i].inputs;
        *ports[i].port |= ports[i].inputs;
        *ports[i].direction |= (uint8_t)~ports[i].inputs;
    }
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode(); // state: PORTC = 0b0100_0000
    }
}
