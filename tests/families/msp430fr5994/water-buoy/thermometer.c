#include "thermometer.h"

#include "board.h"

static volatile uint16_t sample;

uint16_t thermometer_read(void)
{
    P8OUT |= DIVIDER_SUPPLY;
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12CTL2 = ADC12RES_2;
    ADC12MCTL0 = ADC12INCH_17;
    ADC12IER0 = ADC12IE0;
    /* The supervisor of the supply may pause while the converter works. */
    PMMCTL0 = PMMPW;
    PMMCTL0_H = 0;
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    __bis_SR_register(LPM3_bits | GIE);
    ADC12CTL0 &= ~ADC12ENC;
    ADC12CTL0 = 0;
    P8OUT &= (uint8_t)~DIVIDER_SUPPLY;
    return sample;
}

__attribute__((interrupt(ADC12_B_VECTOR))) void on_sample(void)
{
    sample = ADC12MEM0;
    __bic_SR_register_on_exit(LPM3_bits);
}
