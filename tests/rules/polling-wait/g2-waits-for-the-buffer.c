// device: msp430g2553
// The CPU goes round until the byte is out.
#include <msp430.h>

static void send(unsigned char byte)
{
    while (!(IFG2 & UCA0TXIFG)) // finding: polling-wait IFG2 proven
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
        send('o');
        send('k');
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
