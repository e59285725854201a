// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xff;
    DDRC |= 0x3f;
    DDRD = 0xff;
    // clean: floating-pin PB0..PB7
    // clean: floating-pin PC0..PC6
    // clean: floating-pin PD0..PD7
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
