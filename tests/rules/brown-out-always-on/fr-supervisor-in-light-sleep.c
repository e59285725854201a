// device: msp430fr5969
// In the light modes it cannot be off.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM1_bits | GIE); // clean: brown-out-always-on SVSH
}
