// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char pressed;

ISR(INT0_vect) { pressed = 1; }

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        if (!pressed)
            sleep_mode(); // finding: check-then-sleep-race pressed proven warning {{INT0_vect}}
        else
            pressed = 0;
    }
}
