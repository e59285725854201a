// device: msp430g2553
// board: P1.4: { pull: up, ohms: 10000 }
// With its output bit at 0 the resistor pulls down, against the board's.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT3;
    P1DIR = (unsigned char)~(BIT3 | BIT4);
    P1REN = BIT3 | BIT4; // finding: pull-against-level P1.4 proven {{pull-down}}
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
