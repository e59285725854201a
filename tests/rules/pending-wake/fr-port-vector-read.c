// device: msp430fr5969
// Reading the vector register clears the flag that it tells.
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
        __bis_SR_register(LPM4_bits | GIE); // clean: pending-wake P1IFG
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    if (P1IV == P1IV_P1IFG1)
        P2OUT ^= BIT0;
}
