// device: msp430f2618
// The second crystal swings until it is switched off, used or not.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    BCSCTL1 &= (unsigned char)~XT2OFF; // finding: oscillator-kept-on XT2 proven warning
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
