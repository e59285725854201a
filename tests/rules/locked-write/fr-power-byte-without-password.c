// device: msp430fr5969
// The lower byte alone needs the password to have been written before.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0_L &= ~SVSHE_L; // finding: locked-write PMMCTL0 proven {{no unlock}}
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
