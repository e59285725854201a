// device: atmega328p
// rules: superloop-without-sleep, suppression-without-reason, unused-suppression
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    for (;;) { // powerlint: allow superloop-without-sleep
        PORTB ^= 1; // finding@-1: suppression-without-reason superloop-without-sleep warning
        // finding@-2: superloop-without-sleep main()
    }
}
