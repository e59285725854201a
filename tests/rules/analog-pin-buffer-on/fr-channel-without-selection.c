// device: msp430fr5969
// The converter reaches the pin without its selection; the buffer stays on.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PM5CTL0 &= ~LOCKLPM5;
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12MCTL0 = ADC12INCH_3; // finding: analog-pin-buffer-on P1.3 proven
    ADC12IER0 = ADC12IE0;
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    for (;;)
        __bis_SR_register(LPM3_bits | GIE);
}

__attribute__((interrupt(ADC12_VECTOR))) void on_sample(void)
{
    P1OUT = (unsigned char)ADC12MEM0;
}
