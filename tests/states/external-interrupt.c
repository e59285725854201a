// device: atmega328p
// flags: -DF_CPU=8000000UL
// A push button on INT0 by its level: the handler switches itself off, main on again.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t presses;

ISR(INT0_vect)
{
    EIMSK &= ~_BV(INT0);
    presses++;
}

int main(void)
{
    PORTD = _BV(PD2);
    DDRD = 0xF0;
    EICRA = 0;
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        cli();
        EIMSK |= _BV(INT0);
        sleep_enable();
        sei();
        sleep_cpu(); // state: PORTD = 0x04, DDRD = 0xf0, EICRA = 0
        sleep_disable();
    }
}
