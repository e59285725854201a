#include "sounder.h"

#include <avr/io.h>
#include <util/delay.h>

#define SUPPLY PA7
#define SETTLING_MILLISECONDS 50

void sounder_init(void)
{
    DDRA |= _BV(SUPPLY);
}

void sounder_measure(void)
{
    TCCR1B = _BV(CS11); // finding: gated-write TCCR1B proven
    PORTA |= _BV(SUPPLY);
    _delay_ms(SETTLING_MILLISECONDS); // finding: busy-wait-delay sounder_measure() proven
    PORTA &= (uint8_t)~_BV(SUPPLY);
}
