// device: msp430g2553
// rules: polling-wait, suppression-without-reason, unused-suppression
// Behind code the comment speaks of its own line; without a reason the finding stays.
#include <msp430.h>

static void send(unsigned char byte)
{
    while (!(IFG2 & UCA0TXIFG)) // powerlint: allow polling-wait
        ; // finding@-1: suppression-without-reason polling-wait warning
    UCA0TXBUF = byte; // finding@-2: polling-wait IFG2
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
