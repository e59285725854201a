// device: atmega328p
// On one path the pull-ups stay off.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0xf0;
    if (PINB & 1) {
        PORTD = 0x0f; // finding: floating-pin PD0..PD3 possible note {{path}}
    }
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
