#include "rest.h"

#include <avr/interrupt.h>
#include <avr/sleep.h>

void rest_init(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
}

void rest(void)
{
    sleep_enable();
    sleep_cpu();
    sleep_disable();
}
