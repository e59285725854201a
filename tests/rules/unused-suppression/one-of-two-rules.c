// device: attiny1614
// rules: superloop-without-sleep, polling-wait, suppression-without-reason, unused-suppression
// One of the two rules still fires here.
#include <avr/io.h>

int main(void)
{
    // powerlint: allow superloop-without-sleep, polling-wait (it runs from the mains)
    for (;;) { // finding@-1: unused-suppression polling-wait
        PORTB.OUTTGL = PIN0_bm;
    }
}
