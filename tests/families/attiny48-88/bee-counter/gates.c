#include "gates.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>

/* Port B: the outer gates' photo transistors; port D: the inner ones'. Each transistor pulls its pin up when it is lit. */
#define LAMPS PC0 /* all lamps, through one switch */

volatile uint16_t gone_in;
volatile uint16_t gone_out;

static uint8_t outer_before;
static uint8_t inner_before;

void gates_init(void)
{
    PORTA = 0;
    DDRA = 0x0F;
    PORTB = 0;
    DDRB = 0xFF;
    PORTC = 0;
    DDRC = _BV(LAMPS) | _BV(PC1) | _BV(PC2) | _BV(PC3) | _BV(PC7);
    PORTD = 0;
    DDRD = 0xFF;
    ACSR = _BV(ACD);
    power_all_disable();
}

static uint8_t ones(uint8_t bits)
{
    uint8_t count = 0;

    for (; bits != 0; bits &= (uint8_t)(bits - 1))
        count++;
    return count;
}

void gates_sample(void)
{
    uint8_t outer;
    uint8_t inner;

    /* The gates are read for a few microseconds only, and driven low the rest of the time. */
    DDRB = 0;
    DDRD = 0;
    PORTC |= _BV(LAMPS);
    for (uint8_t settle = 0; settle < 10; settle++)
        __asm__ __volatile__("nop");
    outer = PINB;
    inner = PIND;
    PORTC &= (uint8_t)~_BV(LAMPS);
    DDRB = 0xFF;
    DDRD = 0xFF;

    cli();
    gone_in += ones(inner & (uint8_t)~inner_before & outer_before);
    gone_out += ones(outer & (uint8_t)~outer_before & inner_before);
    sei();
    outer_before = outer;
    inner_before = inner;
}
