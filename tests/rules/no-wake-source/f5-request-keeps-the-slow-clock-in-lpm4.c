// device: msp430f5438a
// Asked for, the slow clock goes on even in LPM4.
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
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // clean: no-wake-source SLEEP
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    P1OUT ^= BIT0;
    __bic_SR_register_on_exit(LPM4_bits);
}
