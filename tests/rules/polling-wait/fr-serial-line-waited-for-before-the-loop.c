// device: msp430fr5969
// Waiting once at the start is no habit.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    UCA0CTLW0 = UCSWRST | UCSSEL__SMCLK;
    UCA0BRW = 6;
    UCA0CTLW0 &= ~UCSWRST;
    UCA0TXBUF = 0;
    while (!(UCA0IFG & UCTXIFG))
        ;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE);
}
