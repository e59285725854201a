// device: msp430fr2433
// The counter has its own slow clock: the fast ones may stop. There is no LPM1 and no LPM2.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    RTCMOD = 9999;
    RTCCTL = RTCSS__VLOCLK | RTCIE;
    for (;;)
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm3}}
}

__attribute__((interrupt(RTC_VECTOR))) void on_count(void)
{
    P1OUT = (unsigned char)RTCIV;
}
