// device: atmega328p
// The handler asks for the sleep: coming once more it changes nothing.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile unsigned char tired;

ISR(INT0_vect) { tired = 1; }

int main(void)
{
    EIMSK = _BV(INT0);
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    sei();
    for (;;) {
        PORTB ^= 1;
        if (tired) {
            tired = 0;
            sleep_mode(); 
        }
    }
}
