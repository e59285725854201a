// device: msp430f5529
// The channel connects the pin to the converter; only the selection of the pin takes the buffer away.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    PADIR = 0xFFFF;
    PBDIR = 0xFFFF;
    PCDIR = 0xFFFF;
    PDDIR = 0xFFFF;
    PJDIR = 0xFFFF;
    P6DIR = (unsigned char)~BIT2;
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12MCTL0 = ADC12INCH_2; // finding: analog-pin-buffer-on P6.2 proven warning
    ADC12IE = ADC12IE0;
    for (;;) {
        ADC12CTL0 |= ADC12ENC | ADC12SC;
        __bis_SR_register(LPM4_bits | GIE);
        ADC12CTL0 &= ~ADC12ENC;
    }
}

__attribute__((interrupt(ADC12_VECTOR))) void on_sample(void)
{
    ADC12IFG = 0;
    __bic_SR_register_on_exit(LPM4_bits);
}
