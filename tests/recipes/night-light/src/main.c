#include <avr/io.h>
#include <avr/sleep.h>

#include "light.h"

int main(void)
{
    light_start();
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;)
        sleep_mode();
}
