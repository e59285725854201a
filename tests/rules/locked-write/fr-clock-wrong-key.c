// device: msp430fr5969
// The watchdog's key opens the watchdog only.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    CSCTL0_H = WDTPW >> 8;
    CSCTL1 = DCOFSEL_0; // finding: locked-write CSCTL1 proven
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
