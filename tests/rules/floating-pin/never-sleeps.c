// device: atmega328p
// Without a sleep point the endless loop is where the CPU rests.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    DDRB = 0xff;
    DDRC = 0x7f;
    DDRD = 0x7f; // finding: floating-pin PD7 proven warning {{while the endless loop runs}}
    for (;;) {
        PORTB ^= 1;
    }
}
