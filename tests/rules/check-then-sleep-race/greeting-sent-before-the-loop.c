// device: msp430g2553
// The test of what is left to send ends a wait before the loop; the loop's own sleep does not hang on it.
#include <msp430.h>

static const char *next;
static volatile unsigned char left;

static void send(const char *text, unsigned char count)
{
    next = text;
    left = count;
    __disable_interrupt();
    IE2 |= UCA0TXIE;
    while (left > 0) {
        __bis_SR_register(LPM0_bits | GIE);
        __disable_interrupt();
    }
    IE2 &= (unsigned char)~UCA0TXIE;
    __enable_interrupt();
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    UCA0CTL1 = UCSSEL_2;
    send("hello", 5);
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(USCIAB0TX_VECTOR))) void on_byte(void)
{
    UCA0TXBUF = (unsigned char)*next++;
    if (--left == 0)
        __bic_SR_register_on_exit(LPM0_bits);
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
