// device: msp430g2553
// A light mode while a byte is under way, a deep one else: each pass sleeps.
#include <msp430.h>

static volatile unsigned char is_sending;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1SEL = BIT2;
    P1SEL2 = BIT2;
    UCA0CTL1 = UCSSEL_2;
    P1IE = BIT3;
    for (;;) {
        __disable_interrupt();
        if (is_sending)
            __bis_SR_register(LPM0_bits | GIE); // clean: skipped-sleep main()
        else
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
    __bic_SR_register_on_exit(LPM0_bits);
}
