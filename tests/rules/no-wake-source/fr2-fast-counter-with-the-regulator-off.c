// device: msp430fr2433
// The fast clock does not run there, and nothing can ask for it.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    RTCMOD = 9999;
    RTCCTL = RTCSS__SMCLK | RTCIE;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // finding: no-wake-source SLEEP proven error {{lpm4.5}}
}

__attribute__((interrupt(RTC_VECTOR))) void on_count(void)
{
    P1OUT = (unsigned char)RTCIV;
}
