// device: msp430fr2433
// The clock system has no lock; power management has.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL4 = SELA__REFOCLK | SELMS__DCOCLKDIV;
    PMMCTL0_H = PMMPW_H;
    PMMCTL2 |= INTREFEN;
    PMMCTL2 &= ~INTREFEN;
    PMMCTL0_H = 0;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
