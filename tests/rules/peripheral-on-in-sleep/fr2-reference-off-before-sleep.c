// device: msp430fr2433
// Off again before the sleep.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0_H = PMMPW_H;
    PMMCTL2_L = INTREFEN | TSENSOREN;
    PMMCTL2_L = 0;
    PMMCTL0_H = 0;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: peripheral-on-in-sleep REF TSENSOR
}
