// device: msp430f5525
// The timer counts the slow clock, which goes on in LPM3.
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
        __bis_SR_register(LPM0_bits | GIE); // finding: shallow-sleep proven warning {{lpm3}} // related: shallow-sleep {{waking from lpm3 takes 150 µs (at most 165 µs), from lpm0 6 cycles of the CPU}}
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    P1OUT ^= BIT0;
    __bic_SR_register_on_exit(LPM4_bits);
}
