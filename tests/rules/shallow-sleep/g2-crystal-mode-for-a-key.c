// device: msp430g2553
// LPM3 keeps the auxiliary clock, which only a timer would need.
#include <msp430.h>

#define KEY BIT3

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1OUT = KEY;
    P1REN = KEY;
    P1IE = KEY;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE); // finding: shallow-sleep proven warning {{lpm4}}
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM3_bits);
}
