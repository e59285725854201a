// device: msp430fr5969
// A byte other than the key closes the clock system for what follows.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    CSCTL0_H = CSKEY >> 8;
    CSCTL2 = SELA__VLOCLK | SELS__DCOCLK | SELM__DCOCLK;
    CSCTL0_H = 0;
    CSCTL3 = DIVA__1 | DIVS__1 | DIVM__1; // finding: locked-write CSCTL3 proven
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
