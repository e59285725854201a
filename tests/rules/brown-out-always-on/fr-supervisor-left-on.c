// device: msp430fr5969
// The supply's supervisor is on after reset and stays on in the deep modes.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // finding: brown-out-always-on SVSH proven note {{non-volatile}}
}
