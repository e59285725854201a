#include "hand.h"

#include <avr/io.h>
#include <util/delay.h>

#define SHAKE PD2
#define RECEIVE PD0

void hand_init(void)
{
    PORTA = 0;
    DDRA = _BV(PA0); // finding: floating-pin PA1 proven
    PORTB = 0;
    DDRB = 0xFF;
    PORTD = _BV(SHAKE) | _BV(RECEIVE);
    DDRD = (uint8_t)~(_BV(SHAKE) | _BV(RECEIVE));
}

void hand_step(void)
{
    static uint8_t phase = 1;

    phase = (uint8_t)(phase << 1 | phase >> 7);
    PORTB = phase;
    _delay_ms(12); // finding: busy-wait-delay hand_step() proven
    PORTB = 0;
}
