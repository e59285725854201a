// device: msp430fr5969
// Writing to the complement register inverts both selections at once: none becomes analog, and takes the buffer away.
#include <msp430.h>

static void park(void)
{
    PAOUT = 0;
    PADIR = 0xFFF3; // finding: floating-pin P1.2 proven warning
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PJOUT = 0;
    PJDIR = 0xFF;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    park();
    P1SELC = BIT3;
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: floating-pin P1.3
}
