// device: msp430fr2433
// Both stay on until they are switched off.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0_H = PMMPW_H;
    PMMCTL2_L = INTREFEN | TSENSOREN; // finding: peripheral-on-in-sleep REF proven warning // finding: peripheral-on-in-sleep TSENSOR proven warning
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
