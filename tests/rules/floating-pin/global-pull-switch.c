// device: atmega328p
// The pull-ups are asked for, but the global switch takes them all away.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    PORTD = 0xff;
    MCUCR |= _BV(PUD); // finding: floating-pin PD0..PD7 proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        sleep_mode();
    }
}
