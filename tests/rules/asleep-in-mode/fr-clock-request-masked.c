// device: msp430fr5969
// The program has switched requests for this clock off: the timer stands still.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    CSCTL0_H = CSKEY >> 8;
    CSCTL6 &= ~SMCLKREQEN;
    CSCTL0_H = 0;
    TA0CCR0 = 32767;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__SMCLK | MC__UP; // finding: asleep-in-mode TA0 proven error
    for (;;)
        __bis_SR_register(LPM3_bits | GIE);
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_time(void)
{
}
