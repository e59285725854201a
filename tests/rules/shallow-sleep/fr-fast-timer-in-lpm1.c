// device: msp430fr5969
// A deeper mode is no gain: the timer asks for its clock there.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    TA0CCR0 = 32767;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__SMCLK | MC__UP;
    for (;;)
        __bis_SR_register(LPM1_bits | GIE); // clean: shallow-sleep lpm1
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_time(void)
{
}
