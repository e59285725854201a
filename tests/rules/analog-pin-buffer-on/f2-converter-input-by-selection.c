// device: msp430f2419
// Selecting the pin for the converter takes its buffer away.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P6DIR = (unsigned char)~BIT1;
    P6SEL = BIT1;
    ADC12CTL0 = SHT0_4 | ADC12ON;
    ADC12CTL1 = SHP;
    ADC12MCTL0 = INCH_1; // clean: analog-pin-buffer-on P6.1
    ADC12IE = BIT0;
    for (;;) {
        ADC12CTL0 |= ENC | ADC12SC;
        __bis_SR_register(LPM4_bits | GIE);
        ADC12CTL0 &= ~ENC;
    }
}

__attribute__((interrupt(ADC12_VECTOR))) void on_sample(void)
{
    ADC12IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
