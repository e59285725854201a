// device: msp430g2553
// hertz: 1000000
// 50 ms of waiting at full current after each press.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
        __delay_cycles(50000); // finding: busy-wait-delay main() proven {{50 ms}}
        P1OUT ^= BIT0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
