// device: msp430fr5994
// Port 8 is half a port: what its upper bits hold is nothing.
#include <msp430fr5994.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PAOUT = 0;
    PADIR = 0xFFFF;
    PBOUT = 0;
    PBDIR = 0xFFFF;
    PCOUT = 0;
    PCDIR = 0xFFFF;
    PDOUT = 0;
    PDDIR = 0x0EFF; // finding: floating-pin P8.0 proven warning
    PJOUT = 0;
    PJDIR = 0xFF;
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: floating-pin P5.0 P7.7 P8.1
}
