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
    for (;;) {
        cli();
        if (!pressed) {
            sleep_enable();
            sei();
            sleep_cpu(); // clean: check-then-sleep-race pressed
            sleep_disable();
        }
        pressed = 0;
        sei();
        PORTB ^= 1;
    }
}
