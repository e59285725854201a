#include "rest.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

void rest_until_minute(void)
{
    set_sleep_mode(SLEEP_SMODE_PSAVE_gc);
    sleep_mode();
}
