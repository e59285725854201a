// device: atxmega32a4u
// rules: superloop-without-sleep, suppression-without-reason, unused-suppression
// Without its end there is no reason.
#include <avr/io.h>

int main(void)
{
    // powerlint: allow superloop-without-sleep (a bench set
    for (;;) { // finding: superloop-without-sleep main()
        PORTA.OUTTGL = PIN0_bm; // finding@-2: suppression-without-reason superloop-without-sleep
    }
}
