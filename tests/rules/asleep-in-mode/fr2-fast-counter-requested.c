// device: msp430fr2433
// The counter gets the clock that it asks for.
#include <msp430fr2433.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    RTCMOD = 9999;
    RTCCTL = RTCSS__SMCLK | RTCIE;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: asleep-in-mode RTC
}

__attribute__((interrupt(RTC_VECTOR))) void on_count(void)
{
    P1OUT = (unsigned char)RTCIV;
}
