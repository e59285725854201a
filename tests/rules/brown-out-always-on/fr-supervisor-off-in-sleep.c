// device: msp430fr5969
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L &= ~SVSHE_L;
    PMMCTL0_H = 0;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: brown-out-always-on SVSH
}
