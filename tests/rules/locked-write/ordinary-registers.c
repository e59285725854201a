// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>
#include <avr/power.h>
#include <avr/wdt.h>

int main(void)
{
    DDRB = 0xff;
    TCCR0B = 1;
    MCUCR = _BV(PUD);
    for (;;) {
        sleep_mode();
    }
}
