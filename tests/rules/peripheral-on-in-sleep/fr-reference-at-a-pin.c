// device: msp430fr5969
// Its output is what the board uses.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    REFCTL0 = REFON | REFOUT;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: peripheral-on-in-sleep REF_A
}
