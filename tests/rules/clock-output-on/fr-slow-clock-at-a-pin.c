// device: msp430fr5969
// The first selection of a debugger's pin puts the slow clock out.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR |= BIT2;
    PJSEL0 |= BIT2; // finding: clock-output-on ACLK PJ.2 proven warning
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE);
}
