// device: msp430fr5994
// A word may bring the key and the interrupt enables along; then the registers are open.
#include <msp430fr5994.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    RTCCTL0 = RTCKEY_H << 8 | RTCTEVIE;
    RTCCTL13 = RTCMODE | RTCBCD;
    RTCCTL0_H = 0;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE);
}
