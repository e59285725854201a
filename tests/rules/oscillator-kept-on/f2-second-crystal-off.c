// device: msp430f2618
// After reset, and after the factory's calibration of the clock, the second oscillator is off.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = BIT4;
    P1REN = BIT4;
    P1IFG = 0;
    P1IE = BIT4;
    BCSCTL1 = CALBC1_8MHZ; // clean: oscillator-kept-on XT2
    DCOCTL = CALDCO_8MHZ;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
