#include "sensor.h"

#include "board.h"

static volatile uint16_t sample;

uint16_t sensor_read(void)
{
    P1OUT |= SENSOR_SUPPLY;
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12CTL2 = ADC12RES_2;
    ADC12MCTL0 = ADC12INCH_12;
    ADC12IER0 = ADC12IE0;
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    __bis_SR_register(LPM3_bits | GIE);
    ADC12CTL0 &= ~ADC12ENC;
    ADC12CTL0 = 0;
    P1OUT &= (uint8_t)~SENSOR_SUPPLY;
    return sample >> 2;
}

__attribute__((interrupt(ADC12_VECTOR))) void on_sample(void)
{
    sample = ADC12MEM0;
    __bic_SR_register_on_exit(LPM3_bits);
}
