// device: msp430f2131
// The comparator has its pins at port 2, in an order of its own: CAPD0 is the switch of P2.3.
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
    CAPD = CAPD0;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // clean: floating-pin P2.3
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
