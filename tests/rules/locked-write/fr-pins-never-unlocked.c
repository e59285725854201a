// device: msp430fr5969
// Everything is set and nothing is done: the lock on the pins stays closed.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = 0; // finding: locked-write P1DIR P1OUT P3DIR P3OUT proven {{LOCKLPM5}}
    P1DIR = 0xFF;
    P3OUT = 0;
    P3DIR = 0xFF;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
