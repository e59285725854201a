// device: msp430fr5969
// Without the password the supervisor stays as it is.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    PMMCTL0_L &= ~SVSHE_L;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // finding: brown-out-always-on SVSH proven note
}
