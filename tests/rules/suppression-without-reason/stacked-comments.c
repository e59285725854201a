// device: attiny84
// flags: -DF_CPU=1000000UL
// rules: superloop-without-sleep, busy-wait-delay, suppression-without-reason, unused-suppression
// Each of the comments above the line has its reason.
#include <avr/io.h>

int main(void)
{
    DDRA = 0xFF;
    // powerlint: allow superloop-without-sleep (it runs from the mains)
    // powerlint: allow busy-wait-delay (the lamp's rhythm)
    for (;;) { __builtin_avr_delay_cycles(500000UL); PORTA ^= 1; }
}
