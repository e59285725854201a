// device: msp430fr5994
// A clock that is held is off with the regulator, and nothing is left to bring the part back.
#include <msp430fr5994.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJSEL0 |= BIT4 | BIT5;
    PM5CTL0 &= ~LOCKLPM5;
    RTCCTL0_H = RTCKEY_H;
    RTCCTL13 = RTCMODE | RTCBCD | RTCHOLD;
    RTCCTL0_L = RTCTEVIE;
    RTCCTL0_H = 0;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L = PMMREGOFF;
    PMMCTL0_H = 0;
    __bis_SR_register(LPM4_bits | GIE); // finding: no-wake-source SLEEP proven error {{lpm4.5}}
    for (;;)
        ;
}
