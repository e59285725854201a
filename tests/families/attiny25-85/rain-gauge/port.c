#include "port.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>

#define DATA PB0
#define CLOCK PB1 /* from the reader, idle high */
#define SPARE (_BV(PB3) | _BV(PB4))

static volatile uint8_t clocked;

ISR(PCINT0_vect)
{
    clocked = 1;
}

void port_init(void)
{
    PORTB = _BV(DATA) | _BV(CLOCK);
    DDRB = SPARE;
    PCMSK = _BV(PCINT1);
    GIMSK |= _BV(PCIE);

    ACSR = _BV(ACD);
    power_all_disable();
}

uint8_t port_is_read(void)
{
    uint8_t was_clocked = clocked;

    clocked = 0;
    return was_clocked;
}

/* One bit at each level of the clock. The reader gives up by itself, so a level that never comes ends the message. */
void port_send(uint16_t value)
{
    uint8_t bits = 16;

    while (bits-- > 0) {
        uint8_t level = PINB & _BV(CLOCK);
        uint8_t patience = 200;

        if (value & 1)
            DDRB &= (uint8_t)~_BV(DATA);
        else
            DDRB |= _BV(DATA);
        while ((PINB & _BV(CLOCK)) == level && patience-- > 0)
            ;
        value >>= 1;
    }
    DDRB &= (uint8_t)~_BV(DATA);
}
