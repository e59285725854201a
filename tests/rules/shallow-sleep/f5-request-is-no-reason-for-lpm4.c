// device: cc430f5135
// In LPM4 the timer would ask for the slow clock and get it: that mode would draw as much.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR = 0xFFFF;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    P5DIR = 0xFF;
    TA0CCR0 = 50000;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__ACLK | MC__UP | TACLR;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // clean: shallow-sleep lpm3
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    P1OUT ^= BIT0;
    __bic_SR_register_on_exit(LPM4_bits);
}
