// device: msp430g2553
// rules: polling-wait, suppression-without-reason, unused-suppression
// The reason goes to the last bracket.
#include <msp430.h>

static void send(unsigned char byte)
{
    // powerlint: allow polling-wait (two characters (at most) after a press)
    while (!(IFG2 & UCA0TXIFG))
        ;
    UCA0TXBUF = byte;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    UCA0CTL1 = UCSSEL_2;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
        send('x');
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
