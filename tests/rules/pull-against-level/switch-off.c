// device: atmega328p
// board: PB1: { pull: down, ohms: 10000 }
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTB = 0x0f;
    MCUCR |= _BV(PUD);
    set_sleep_mode(SLEEP_MODE_IDLE);
    sei();
    for (;;) {
        sleep_mode();
    }
}
