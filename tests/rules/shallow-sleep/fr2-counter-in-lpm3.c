// device: msp430fr2433
// In LPM4 it would keep its oscillator all the same.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    RTCMOD = 9999;
    RTCCTL = RTCSS__VLOCLK | RTCIE;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: shallow-sleep lpm3
}

__attribute__((interrupt(RTC_VECTOR))) void on_count(void)
{
    P1OUT = (unsigned char)RTCIV;
}
