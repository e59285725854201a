#include "acid.h"

#include <msp430.h>

static volatile unsigned int sample;

void acid_init(void)
{
    SD16AE = PROBE;
    SD16INCTL0 = SD16INCH_1;
    SD16CTL = SD16REFON | SD16SSEL_1; // finding: peripheral-on-in-sleep SD16_REF proven warning
    SD16CCTL0 = SD16SNGL | SD16UNI | SD16IE;
}

int acid_is_right(void)
{
    _DINT();
    SD16CCTL0 |= SD16SC;
    _BIS_SR(LPM1_bits | GIE);
    SD16CCTL0 &= ~SD16SC;
    return sample > 0x6000 && sample < 0x7000;
}

#pragma vector = SD16_VECTOR
__interrupt void on_sample(void)
{
    sample = SD16MEM0;
    _BIC_SR_IRQ(LPM3_bits);
}
