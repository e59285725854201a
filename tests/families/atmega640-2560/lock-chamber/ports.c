#include "ports.h"

#include <avr/io.h>

void ports_init(void)
{
    DDRA = 0xFF;
    DDRB = 0xFF;
    DDRC = 0xFF;
    /* The contacts close to ground. */
    PORTD = 0x03;
    DDRD = 0xFC;
    DDRE = 0xFF;
    DDRF = 0xFF;
    DDRG = 0x3F;
    DDRH = 0xFF;
    DDRJ = 0xFF;
    DDRK = 0xFF;
    DDRL = 0xFF;

    MCUCR = _BV(JTD);
    MCUCR = _BV(JTD);
    ACSR = _BV(ACD);
    PRR0 = _BV(PRTWI) | _BV(PRTIM2) | _BV(PRTIM0) | _BV(PRTIM1) | _BV(PRSPI) | _BV(PRUSART0) | _BV(PRADC);
    PRR1 = _BV(PRTIM5) | _BV(PRTIM4) | _BV(PRTIM3) | _BV(PRUSART3) | _BV(PRUSART2) | _BV(PRUSART1);
}
