#include "pins.h"

void pins_init(void)
{
    PORTB = (1 << SENDS);
    DDRB = 0xFF;
    PORTC = 0;
    DDRC = 0x7F;
    PORTD = 0;
    DDRD = 0xFF;
    PORTE = 1 << SENSOR;
    DDRE = (uint8_t)~(1 << SENSOR);

    ACSR = (1 << ACD);
    PRR0 = 0xFF;
    PRR1 = 0x3D;
}
