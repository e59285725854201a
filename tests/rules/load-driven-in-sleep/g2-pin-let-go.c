// device: msp430g2553
// board: P1.6: { load: "sounder", active: high }
// Going back to an input lets go of the load, whatever the output register holds.
#include <msp430.h>

#define SOUNDER BIT6

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = SOUNDER;
    P1IE = BIT3;
    for (;;) {
        P1DIR |= SOUNDER;
        __delay_cycles(200);
        P1DIR &= (unsigned char)~SOUNDER;
        __bis_SR_register(LPM4_bits | GIE); // clean: load-driven-in-sleep P1.6
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
