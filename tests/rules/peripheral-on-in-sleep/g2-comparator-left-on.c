// device: msp430g2553
// The comparator draws in every mode until its bit is cleared.
#include <msp430.h>

static volatile unsigned char is_low;

static void look(void)
{
    CACTL2 = P2CA4;
    CACTL1 = CAREF_2 | CAON; // finding: peripheral-on-in-sleep COMP_A proven
    is_low = CACTL2 & CAOUT;
}

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
        look();
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
