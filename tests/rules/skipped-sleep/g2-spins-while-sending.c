// device: msp430g2553
// While a byte is under way the loop goes round without sleep.
#include <msp430.h>

static volatile unsigned char is_sending;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    UCA0CTL1 = UCSSEL_2;
    P1IE = BIT3;
    __enable_interrupt();
    for (;;) {
        if (!is_sending) // finding: skipped-sleep main() proven
            __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    is_sending = 1;
    IE2 |= UCA0TXIE;
    UCA0TXBUF = 'x';
    __bic_SR_register_on_exit(LPM4_bits);
}

__attribute__((interrupt(USCIAB0TX_VECTOR))) void on_sent(void)
{
    IE2 &= (unsigned char)~UCA0TXIE;
    is_sending = 0;
}
