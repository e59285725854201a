// device: msp430g2553
// Without the password the write resets the part: what stands behind it never runs.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTHOLD; // finding: locked-write WDTCTL proven
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
