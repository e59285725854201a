// device: cc430f5137
// A pin carries the clock that the program has mapped to it.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    PMAPKEYID = PMAPKEY;
    P2MAP3 = PM_ACLK;
    PMAPKEYID = 0;
    P2DIR |= BIT3;
    P2SEL |= BIT3; // finding: clock-output-on ACLK P2.3 proven warning
    TA0CTL = TASSEL__ACLK | MC__CONTINUOUS;
    TA0CCTL0 = CCIE;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    P1OUT ^= BIT0;
    __bic_SR_register_on_exit(LPM4_bits);
}
