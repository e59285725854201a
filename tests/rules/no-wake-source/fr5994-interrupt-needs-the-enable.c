// device: msp430fr5994
// From LPM4 the pin wakes by an interrupt, and these are off.
#include <msp430fr5994.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    P1IFG = 0;
    P1IE = BIT0;
    __bis_SR_register(LPM4_bits); // finding: no-wake-source proven error
    return 0;
}
