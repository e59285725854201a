// device: msp430fr5994
// The real-time clock has a key of its own; that of power management does not open it.
#include <msp430fr5994.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0_H = PMMPW_H;
    RTCCTL13 = RTCMODE | RTCBCD; // finding: locked-write RTCCTL13 proven
    PMMCTL0_H = 0;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
