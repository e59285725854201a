#include "slot.h"

static volatile uint8_t events;

ISR(PCINT3_vect)
{
    if (!(PINE & 1 << FLAP))
        events++;
}

void pins_prepare(void)
{
    PORTB = (uint8_t)~(1 << LINE);
    PORTB |= 1 << LINE;
    DDRB = 1 << LINE;
    PORTC = 0x7F;
    PORTD = 0xFF;
    PORTE = 0x0F;
    PCMSK3 = 1 << PCINT24;
    PCICR = 1 << PCIE3;
    ACSR = 1 << ACD;
    PRR0 = 0xFF;
    PRR1 = 1 << PRTWI1 | 1 << PRPTC | 1 << PRTIM4 | 1 << PRSPI1 | 1 << PRTIM3;
}

uint8_t flap_events(void)
{
    return events;
}
