// device: msp430fr5969
// The slow clock runs in LPM3, too. In LPM4 it would be asked for, and run all the same.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    TA0CCR0 = 32767;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | MC__UP;
    for (;;)
        __bis_SR_register(LPM1_bits | GIE); // finding: shallow-sleep proven warning {{lpm3}}
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_time(void)
{
}
