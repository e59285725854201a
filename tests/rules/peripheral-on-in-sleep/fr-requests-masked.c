// device: msp430fr5969
// With its requests masked a forgotten timer stops with its clock.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL0_H = CSKEY >> 8;
    CSCTL6 &= ~SMCLKREQEN;
    CSCTL0_H = 0;
    TB0CTL = TBSSEL__SMCLK | MC__CONTINUOUS;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: peripheral-on-in-sleep TB0
}
