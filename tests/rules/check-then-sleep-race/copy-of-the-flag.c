// device: atmega328p
// The copy is taken with interrupts off; the test of it comes too late.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char pressed;

ISR(INT0_vect) { pressed = 1; }

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        cli();
        unsigned char now = pressed;
        pressed = 0;
        sei();
        if (!now)
            sleep_mode(); // finding: check-then-sleep-race pressed proven
        else
            PORTB ^= 1;
    }
}
