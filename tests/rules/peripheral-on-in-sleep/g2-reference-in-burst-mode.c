// device: msp430g2553
// The reference is switched off with the converter after each sample.
#include <msp430.h>

static volatile unsigned level;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE); // clean: peripheral-on-in-sleep ADC10 REF
        ADC10CTL0 = SREF_1 | REFON | ADC10ON;
        ADC10CTL0 |= ENC | ADC10SC;
        while (ADC10CTL1 & ADC10BUSY)
            ;
        level = ADC10MEM;
        ADC10CTL0 &= (unsigned)~ENC;
        ADC10CTL0 = 0;
    }
}

__attribute__((interrupt(PORT1_VECTOR))) void on_key(void)
{
    P1IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
