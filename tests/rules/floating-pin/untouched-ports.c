// device: atmega328p
// Nothing is configured: every pad floats, and only reset is to blame. PC6 is the reset pin.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    set_sleep_mode(SLEEP_MODE_IDLE); // finding: floating-pin PB0..PB7 proven warning
    // finding@-1: floating-pin PC0..PC5 proven warning
    // finding@-2: floating-pin PD0..PD7 proven warning
    for (;;) {
        sleep_mode(); // related: floating-pin {{idle}}
    }
}
