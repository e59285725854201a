// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

ISR(INT0_vect)
{
    EIMSK = 0;
}

int main(void)
{
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        EIMSK = _BV(INT0);
        sei();
        sleep_mode();
    }
}
