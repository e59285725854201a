// device: msp430f5528
// Without a debugger its four pins are a port, and inputs; the pads that the package keeps inside are parked with their ports.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD; // finding: floating-pin PJ.0 PJ.1 PJ.2 PJ.3 proven warning
    PAOUT = BIT4;
    PAREN = BIT4;
    PADIR = 0xFFFF & ~BIT4;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    P1IFG = 0;
    P1IE = BIT4;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
