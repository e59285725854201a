#include "pads.h"

#include <avr/io.h>

struct pads {
    volatile uint8_t *direction;
    volatile uint8_t *level;
    uint8_t outputs;
};

/* The barrier drives PB0 itself; the crystal sits on PB6 and PB7. */
static const struct pads pads[] = {
    {&DDRB, &PORTB, 0x3E},
    {&DDRC, &PORTC, 0x3F},
    {&DDRD, &PORTD, 0xFF},
};

void pads_init(void)
{
    for (uint8_t i = 0; i < sizeof pads / sizeof pads[0]; i++) {
        *pads[i].level = 0;
        *pads[i].direction = pads[i].outputs;
    }
    ACSR = _BV(ACD);
    PRR = _BV(PRTWI) | _BV(PRTIM0) | _BV(PRTIM1) | _BV(PRSPI) | _BV(PRUSART0) | _BV(PRADC);
}
