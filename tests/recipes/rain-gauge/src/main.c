#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#include "tip.h"

int main(void)
{
    PORTB = 0x3F;
    PRR = 0x0F;
    tip_start();
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;)
        sleep_mode();
}
