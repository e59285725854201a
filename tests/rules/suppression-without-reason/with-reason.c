// device: atmega328p
// rules: superloop-without-sleep, suppression-without-reason, unused-suppression
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    // powerlint: allow superloop-without-sleep (it runs from the mains)
    for (;;) {
        PORTB ^= 1;
    }
}
