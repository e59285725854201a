// device: msp430fr5969
// Opening the lock gives the pins what the registers say, and a plain input floats then. The write to blame is the direction's.
#include <msp430.h>

static void park(void)
{
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0xFF7F; // finding: floating-pin P3.7 proven warning
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
        __bis_SR_register(LPM4_bits | GIE);
}
