#include "float_switch.h"

#include <avr/interrupt.h>
#include <avr/io.h>

#include "board.h"

EMPTY_INTERRUPT(PCINT2_vect)

void float_switch_init(void)
{
    PCMSK2 = 1 << PCINT20;
    PCICR = 1 << PCIE2;
}

uint8_t float_switch_is_low(void)
{
    return !(PIND & (1 << FLOAT_SWITCH));
}
