// device: msp430fr2433
// There is no LPM1 to go to, and in LPM3 the counter would ask for its clock.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    RTCMOD = 9999;
    RTCCTL = RTCSS__SMCLK | RTCIE;
    for (;;)
        __bis_SR_register(LPM0_bits | GIE); // clean: shallow-sleep lpm0
}

__attribute__((interrupt(RTC_VECTOR))) void on_count(void)
{
    P1OUT = (unsigned char)RTCIV;
}
