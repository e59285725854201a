#include "scale.h"

#include <msp430fr5994.h>

/* P7.5 has the bridge's amplifier. */
void scale_init(void)
{
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12CTL2 = ADC12RES_2;
    ADC12MCTL0 = ADC12INCH_17; // finding: analog-pin-buffer-on P7.5 proven warning
    UCA0CTLW0 = UCSWRST | UCSSEL__SMCLK;
    UCA0BRW = 6;
    UCA0CTLW0 &= ~UCSWRST;
}

void scale_weigh(void)
{
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    while (ADC12CTL1 & 1) // finding: polling-wait ADC12CTL1 proven warning
        ;
    ADC12CTL0 &= ~ADC12ENC;
    UCA0TXBUF = (unsigned char)(ADC12MEM0 >> 4);
}
