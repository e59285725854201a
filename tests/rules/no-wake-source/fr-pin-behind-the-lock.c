// device: msp430fr5969
// A pin that the lock keeps high-impedance with its buffer off tells nothing.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT1;
    P1REN = BIT1;
    P1IES = BIT1;
    P1IFG = 0;
    P1IE = BIT1;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // finding: no-wake-source SLEEP proven error {{PORT1_VECTOR}}
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
