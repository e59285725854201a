// device: msp430fr5969
// The third selection is analog and takes the buffer away.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1SEL0 |= BIT3;
    P1SEL1 |= BIT3;
    PM5CTL0 &= ~LOCKLPM5;
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12MCTL0 = ADC12INCH_3;
    ADC12IER0 = ADC12IE0;
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE); // clean: analog-pin-buffer-on P1.3
}

__attribute__((interrupt(ADC12_VECTOR))) void on_sample(void)
{
    P1OUT = (unsigned char)ADC12MEM0;
}
