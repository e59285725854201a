// device: msp430fr5994
// What ends LPM4.5 is a reset: interrupts are off, and the pin wakes all the same.
#include <msp430fr5994.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    P1IFG = 0;
    P1IE = BIT0;
    RTCCTL0_H = RTCKEY_H;
    RTCCTL13 = RTCHOLD;
    RTCCTL0_H = 0;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF;
    PMMCTL0_H = 0;
    __bis_SR_register(LPM4_bits); // clean: no-wake-source SLEEP
    return 0;
}
