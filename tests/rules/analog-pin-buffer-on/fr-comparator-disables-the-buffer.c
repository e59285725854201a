// device: msp430fr5969
// The comparator has a switch for each of its inputs.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    CBCTL0 = CBIPEN | CBIPSEL_5;
    CBCTL3 = CBPD5;
    CBCTL1 = CBON | CBPWRMD_2;
    CBINT = CBIE;
    for (;;)
        __bis_SR_register(LPM4_bits | GIE); // clean: analog-pin-buffer-on P1.5
}

__attribute__((interrupt(COMP_B_VECTOR))) void on_level(void)
{
    CBINT &= ~CBIFG;
}
