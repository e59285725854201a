// device: msp430fr5969
// The end of a conversion can raise an interrupt.
#include <msp430.h>

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    P1SEL0 |= BIT3;
    P1SEL1 |= BIT3;
    PM5CTL0 &= ~LOCKLPM5;
    SFRIE1 = WDTIE;
    WDTCTL = WDT_ADLY_1000;
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12MCTL0 = ADC12INCH_3;
    for (;;) {
        __bis_SR_register(LPM3_bits | GIE);
        ADC12CTL0 |= ADC12ENC | ADC12SC;
        while (ADC12CTL1 & ADC12BUSY) // finding: polling-wait ADC12CTL1 proven
            ;
        P4OUT = (unsigned char)ADC12MEM0;
    }
}

__attribute__((interrupt(WDT_VECTOR))) void on_second(void)
{
    __bic_SR_register_on_exit(LPM3_bits);
}
