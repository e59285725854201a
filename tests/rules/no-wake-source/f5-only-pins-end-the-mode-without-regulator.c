// device: msp430f5529
// With the regulator off nothing runs: a timer cannot end that, a pin can.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR = 0xFFFF;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    PDDIR = 0xFFFF;
    TA0CCR0 = 50000;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | MC__UP | TACLR;
    PMMCTL0_H = PMMPW_H;
    PMMCTL0_L |= PMMREGOFF;
    PMMCTL0_H = 0;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // finding: no-wake-source SLEEP proven error
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    P1OUT ^= BIT0;
    __bic_SR_register_on_exit(LPM4_bits);
}
