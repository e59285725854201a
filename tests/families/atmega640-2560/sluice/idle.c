#include "idle.h"

#include <avr/io.h>
#include <avr/sleep.h>

void idle_until_tick(void)
{
    /* The asynchronous timer must have taken a write before the part may sleep again. */
    OCR2A = 0;
    while (ASSR & _BV(OCR2AUB))
        ;
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sleep_mode();
}
