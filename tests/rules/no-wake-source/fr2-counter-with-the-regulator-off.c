// device: msp430fr2433
// The counter goes on with the regulator off, and brings the part back by a reset.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    RTCMOD = 9999;
    RTCCTL = RTCSS__VLOCLK | RTCIE;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: no-wake-source SLEEP
}

__attribute__((interrupt(RTC_VECTOR))) void on_count(void)
{
    P1OUT = (unsigned char)RTCIV;
}
