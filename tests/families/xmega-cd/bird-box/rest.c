#include "box.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

void sleep_deep(void)
{
    set_sleep_mode(SLEEP_SMODE_PDOWN_gc);
    sleep_enable();
    sei();
    sleep_cpu();
    sleep_disable();
}
