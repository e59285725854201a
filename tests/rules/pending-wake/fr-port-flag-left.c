// device: msp430fr5969
// Entering the handler leaves a port's flag as it is.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT1;
    P1REN = BIT1;
    PM5CTL0 &= ~LOCKLPM5;
    P1IES = BIT1;
    P1IFG = 0;
    P1IE = BIT1;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // finding: pending-wake P1IFG proven error
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P2OUT ^= BIT0;
}
