// device: atmega328p
// The handler takes the sleep-enable bit back: the instruction does nothing then.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char pressed;

ISR(INT0_vect)
{
    pressed = 1;
    sleep_disable();
}

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        sleep_enable();
        if (!pressed)
            sleep_cpu(); // clean: check-then-sleep-race pressed
        pressed = 0;
        PORTB ^= 1;
    }
}
