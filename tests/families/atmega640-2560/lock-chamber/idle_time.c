#include "idle_time.h"

#include <avr/sleep.h>

void idle_time(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sleep_mode();
}
