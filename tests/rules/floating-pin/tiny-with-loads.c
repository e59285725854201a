// device: attiny85
// PB5 is the reset pin; PB1 drives a load.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = _BV(PB1); // finding: floating-pin PB0 PB2 PB3 PB4 proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
