// device: msp430f2131
// CAPD3 is the switch of P2.1, not of P2.3.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    P1DIR = (unsigned char)~BIT4;
    P2SEL = 0;
    P2DIR = (unsigned char)~BIT3;
    CAPD = CAPD3; // finding: floating-pin P2.3 proven warning
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
