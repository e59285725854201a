// device: msp430f249
// The key is let in on one path alone. Whenever something can wake the part, the deepest mode would do.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1REN = BIT0;
    P1OUT = BIT0;
    if (P2IN & BIT0)
        P1IE = BIT0;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // finding: shallow-sleep possible note {{lpm4}}
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
