// device: msp430g2553
// The auxiliary clock leaves by P1.0 only if the pin is an output as well.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1SEL = BIT0;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // clean: clock-output-on ACLK SMCLK
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
}
