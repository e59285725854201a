// device: msp430fr5969
// What was written behind the lock holds as soon as it is opened.
#include <msp430.h>

static void park(void)
{
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PJOUT = 0;
    PJDIR = 0xFF;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    park();
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: floating-pin P1.0 P2.7 P3.3 P4.7 PJ.0 PJ.7
}
