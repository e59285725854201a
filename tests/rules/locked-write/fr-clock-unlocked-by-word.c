// device: msp430fr5969
// The key opens as a word, too, and stays in force.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    CSCTL0 = CSKEY;
    CSCTL1 = DCOFSEL_0;
    CSCTL3 = DIVA__1 | DIVS__1 | DIVM__1;
    CSCTL6 &= ~SMCLKREQEN;
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
