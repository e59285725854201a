// device: msp430fr5969
// With the regulator off the real-time clock goes on, and its event brings the part back by a reset.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJSEL0 |= BIT4 | BIT5;
    PM5CTL0 &= ~LOCKLPM5;
    RTCCTL01 = RTCBCD | RTCTEV__MIN | RTCTEVIE;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF_L;
    __bis_SR_register(LPM4_bits | GIE); // clean: no-wake-source SLEEP
    for (;;)
        ;
}
