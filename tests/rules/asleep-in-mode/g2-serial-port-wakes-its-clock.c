// device: msp430g2553
// SMCLK comes on by itself when a byte begins: the port works in every mode.
#include <msp430.h>

static volatile unsigned char received;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1SEL = BIT1;
    P1SEL2 = BIT1;
    UCA0CTL1 = UCSSEL_2;
    IE2 = UCA0RXIE;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(USCIAB0RX_VECTOR))) void on_byte(void)
{
    received = UCA0RXBUF;
}
