// device: msp430fr5969
// The pin is high-impedance as long as the lock is closed.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR |= BIT2;
    PJSEL0 |= BIT2;
    SFRIE1 = NMIIE;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: clock-output-on ACLK
}
