// device: msp430fr5969
// Or-ing a bit in reads another value in the password's place, and writing that back resets the part.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0 &= ~SVSHE; // finding: locked-write PMMCTL0 proven {{resets}}
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
