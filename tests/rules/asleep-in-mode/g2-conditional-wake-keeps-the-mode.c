// device: msp430g2553
// A handler that wakes the program on some of its interrupts only, by clearing all bits of the deepest mode: after it, and where it lets
// the CPU sleep on, the bits that choose the mode are as certain as before.
#include <msp430.h>

static volatile unsigned char presses;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT3;
    P1REN = BIT3;
    P1DIR = (unsigned char)~BIT3;
    P2SEL = 0;
    P2OUT = 0;
    P2DIR = 0xFF;
    P3OUT = 0;
    P3DIR = 0xFF;
    BCSCTL3 = LFXT1S_2;
    P1IFG = 0;
    P1IE = BIT3;

    for (;;) {
        /* The timer stands still here, and is off. */
        TA0CTL = 0;
        __bis_SR_register(LPM4_bits | GIE);
        TA0CCR0 = 12000;
        TA0CCTL0 = CCIE;
        TA0CTL = TASSEL_1 | MC_1 | TACLR; // clean: asleep-in-mode TA0
        __bis_SR_register(LPM3_bits | GIE);
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    if (++presses == 3) {
        presses = 0;
        __bic_SR_register_on_exit(LPM4_bits);
    }
}

__attribute__((interrupt(TIMER0_A0_VECTOR))) void on_time(void)
{
    __bic_SR_register_on_exit(LPM4_bits);
}
