#include "pins.h"

#include <avr/io.h>
#include <avr/power.h>

/* The gauges are on the lowest pins of port A; nothing else is wired, but the debugger's port must not run. */
void pins_init(void)
{
    DDRA = 0xFC;
    DDRB = 0xFF;
    DDRC = 0xFF;
    DDRD = 0xFF;
    PORTB = 0x00;

    MCUCR = _BV(JTD);
    MCUCR = _BV(JTD);

    ACSR = _BV(ACD);
    power_all_disable();
}
