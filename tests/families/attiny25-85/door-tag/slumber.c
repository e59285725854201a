#include "slumber.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

void slumber_init(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
}

void slumber(uint8_t (*is_over)(void))
{
    /* What comes between the look and the sleep must not be missed: interrupts are on while the part sleeps. */
    cli();
    while (!is_over()) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
}
