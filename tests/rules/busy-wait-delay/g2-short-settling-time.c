// device: msp430g2553
// hertz: 1000000
// 30 microseconds for a reference to settle.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
        ADC10CTL0 = SREF_1 | REFON;
        __delay_cycles(30);
        ADC10CTL0 = 0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
