// device: msp430g2553
// The converter takes P1.5; its bit in the analog enable register is another pin's.
#include <msp430.h>

static volatile unsigned level;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1IE = BIT3;
    ADC10AE0 = BIT4;
    for (;;) {
        __bis_SR_register(LPM4_bits | GIE);
        ADC10CTL1 = INCH_5; // finding: analog-pin-buffer-on P1.5
        ADC10CTL0 = ADC10SHT_3 | ADC10ON;
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
