// device: msp430g2553
// board: P1.6: { pull: up, ohms: 4700 }
// board: P1.7: { pull: up, ohms: 4700 }
// All pins are parked low, those of the bus with its resistors, too.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT3;
    P1REN = BIT3;
    P1DIR = (unsigned char)~BIT3; // finding: output-against-level P1.6 proven warning
    // finding@-1: output-against-level P1.7 proven warning
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
