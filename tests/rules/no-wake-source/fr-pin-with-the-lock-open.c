// device: msp430fr5969
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
        __bis_SR_register(LPM4_bits | GIE); // clean: no-wake-source SLEEP
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
