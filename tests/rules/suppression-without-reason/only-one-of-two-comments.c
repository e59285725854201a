// device: attiny1614
// rules: superloop-without-sleep, busy-wait-delay, suppression-without-reason, unused-suppression
// hertz: 3333333
#include <avr/io.h>

static void wait(void)
{
    // powerlint: allow busy-wait-delay (the motor must settle, and it runs from the mains)
    __builtin_avr_delay_cycles(100000UL);
}

int main(void)
{
    /* powerlint: allow superloop-without-sleep */
    for (;;) { // finding: superloop-without-sleep main()
        // finding@-2: suppression-without-reason superloop-without-sleep
        wait();
        PORTB.OUTTGL = PIN0_bm;
    }
}
