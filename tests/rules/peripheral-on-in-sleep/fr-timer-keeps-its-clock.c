// device: msp430fr5969
// A forgotten timer keeps its clock, and what makes it, even in LPM4.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    TB0CTL = TBSSEL__SMCLK | MC__CONTINUOUS; // finding: peripheral-on-in-sleep TB0 proven warning
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
