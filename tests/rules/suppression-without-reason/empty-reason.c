// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    // powerlint: allow superloop-without-sleep ()
    // finding@-1: suppression-without-reason superloop-without-sleep
    for (;;) {
        PORTB ^= 1;
    }
}
