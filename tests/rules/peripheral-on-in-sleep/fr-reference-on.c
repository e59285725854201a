// device: msp430fr5969
// Nothing switches the shared reference off but the program.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    REFCTL0 = REFON | REFVSEL_1; // finding: peripheral-on-in-sleep REF_A proven warning
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
