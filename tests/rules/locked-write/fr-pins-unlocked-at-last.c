// device: msp430fr5969
// The lock is there to be opened once all pins are set.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = 0;
    P1DIR = 0xFF;
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
