// device: msp430fr2433
// The program has switched requests for this clock off.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL8 &= ~SMCLKREQEN;
    RTCMOD = 9999;
    RTCCTL = RTCSS__SMCLK | RTCIE; // finding: asleep-in-mode RTC proven error
    for (;;)
        __bis_SR_register(LPM3_bits | GIE);
}

__attribute__((interrupt(RTC_VECTOR))) void on_count(void)
{
    P1OUT = (unsigned char)RTCIV;
}
