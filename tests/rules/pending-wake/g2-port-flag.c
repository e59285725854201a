// device: msp430g2553
// Entering the handler leaves a port's flag as it is.
#include <msp430.h>

#define KEY BIT3

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = KEY;
    P1REN = KEY;
    P1IES = KEY;
    P1IFG = 0;
    P1IE = KEY;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // finding: pending-wake P1IFG proven error {{Write 0}}
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P2OUT ^= BIT0;
}
