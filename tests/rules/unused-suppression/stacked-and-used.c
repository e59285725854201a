// device: atmega328p
// rules: superloop-without-sleep, polling-wait, suppression-without-reason, unused-suppression
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    // powerlint: allow superloop-without-sleep (it runs from the mains)
    // powerlint: allow polling-wait (the converter is fast)
    for (;;) while (!(TIFR0 & 1)) ;
}
