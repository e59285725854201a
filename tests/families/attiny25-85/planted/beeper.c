#include "beeper.h"

#include <util/delay.h>

void beep(void)
{
    uint8_t waves = 200;

    while (waves-- > 0) {
        PINB = _BV(BEEPER);
        _delay_us(1200); // finding: busy-wait-delay beep() proven
    }
}
