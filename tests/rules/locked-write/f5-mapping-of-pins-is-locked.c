// device: cc430f5133
// The mapping of pins takes a write only behind its key.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    P3MAP0 = PM_UCA0TXD; // finding: locked-write P3MAP0 proven warning
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
