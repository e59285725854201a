// device: msp430f5529
// With the regulator off the pin brings the part back by a reset, interrupts on or off.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IFG = 0;
    P1IE = BIT1;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF;
    PMMCTL0_H = 0;
    __bis_SR_register(LPM4_bits); // clean: no-wake-source SLEEP
    return 0;
}
