// device: msp430fr5969
// With the regulator off no timer runs; the way back would have been a pin or the real-time clock.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    TA0CCR0 = 32767;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | MC__UP;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF_L;
    __bis_SR_register(LPM4_bits | GIE); // finding: no-wake-source SLEEP proven error {{lpm4.5}}
    for (;;)
        ;
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_second(void)
{
}
