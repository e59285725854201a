// device: msp430f5529
// A timer on the fast clock asks for it, in LPM3 too: it runs on there, with the oscillator that it needs, for nobody.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PJDIR = 0xFFFF;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    PDDIR = 0xFFFF;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    TA0CTL = TASSEL__SMCLK | MC__CONTINUOUS; // finding: peripheral-on-in-sleep TA0 proven warning
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
