// device: msp430f5529
// Ports come in pairs, as words; a word of the pair is the two ports.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PAOUT = BIT4;
    PAREN = BIT4;
    PADIR = 0xFFFF & ~BIT4;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    PDDIR = 0xFFFF;
    PJDIR = 0xFFFF;
    P1IFG = 0;
    P1IE = BIT4;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // clean: floating-pin P1.0..P1.7 P2.0..P2.7 P4.0..P4.7 P8.0..P8.2 PJ.0..PJ.3
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
