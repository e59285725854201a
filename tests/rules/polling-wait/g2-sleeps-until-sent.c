// device: msp430g2553
#include <msp430.h>

static volatile unsigned char is_free = 1;

static void send(unsigned char byte)
{
    is_free = 0;
    UCA0TXBUF = byte;
    IE2 |= UCA0TXIE;
    while (!is_free)
        __bis_SR_register(LPM0_bits | GIE);
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

__attribute__((interrupt(USCIAB0TX_VECTOR))) void on_sent(void)
{
    IE2 &= (unsigned char)~UCA0TXIE;
    is_free = 1;
    __bic_SR_register_on_exit(LPM0_bits);
}
