// device: atmega328p
// Two files: the pins module parks all but one.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include "pins.h"

int main(void)
{
    pins_park_all();
    pins_release(3);
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
