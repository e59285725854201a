// device: msp430fr5994
// The clock goes on with the regulator off.
#include <msp430fr5994.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJSEL0 |= BIT4 | BIT5;
    PM5CTL0 &= ~LOCKLPM5;
    RTCCTL0_H = RTCKEY_H;
    RTCCTL13 = RTCMODE | RTCBCD;
    RTCCTL0_L = RTCTEVIE;
    RTCCTL0_H = 0;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L = PMMREGOFF;
    PMMCTL0_H = 0;
    __bis_SR_register(LPM4_bits | GIE); // clean: no-wake-source SLEEP
    for (;;)
        ;
}
