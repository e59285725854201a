#include "soil.h"

#include <msp430.h>

#define DRY 700

void soil_init(void)
{
    ADC10AE0 = SOIL;
    ADC10CTL1 = INCH_7;
    ADC10CTL0 = SREF_1 | ADC10SHT_3 | REFON; // finding: peripheral-on-in-sleep REF proven warning
}

int soil_is_dry(void)
{
    ADC10CTL0 |= ADC10ON | ADC10IE;
    ADC10CTL0 |= ENC | ADC10SC;
    /* The converter's own oscillator goes on in every mode. */
    _BIS_SR(LPM4_bits | GIE);
    ADC10CTL0 &= ~(ENC | ADC10IE);
    ADC10CTL0 &= ~ADC10ON;
    return ADC10MEM > DRY;
}

#pragma vector = ADC10_VECTOR
__interrupt void on_sample(void)
{
    LPM4_EXIT;
}
