#include "slumber.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

void slumber_init(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
}

void slumber(void)
{
    sleep_enable();
    sleep_cpu();
    sleep_disable();
}
