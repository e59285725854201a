// device: msp430fr2433
// The reference is a matter of power management, and its register asks for the password.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL2 |= INTREFEN; // finding: locked-write PMMCTL2 proven
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
