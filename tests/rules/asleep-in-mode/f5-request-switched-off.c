// device: msp430f5529
// The timer asks for the fast clock, which requests are not let to keep running in LPM3.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR = 0xFFFF;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    PDDIR = 0xFFFF;
    UCSCTL8 &= ~SMCLKREQEN;
    TA0CCR0 = 50000;
    TA0CCTL0 = CCIE;
    TA0CTL = TASSEL__SMCLK | MC__UP | TACLR; // finding: asleep-in-mode TA0 proven warning
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_tick(void)
{
    P1OUT ^= BIT0;
    __bic_SR_register_on_exit(LPM4_bits);
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
