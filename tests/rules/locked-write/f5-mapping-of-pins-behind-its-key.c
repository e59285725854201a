// device: cc430f5133
// Behind its key the mapping takes words and bytes.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    PMAPKEYID = PMAPKEY;
    P3MAP0 = PM_UCA0TXD;
    P3MAP23 = 0;
    PMAPKEYID = 0;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
