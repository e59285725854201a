#include "thermometers.h"

#include "board.h"

static volatile uint16_t sample;

static uint16_t measure(uint16_t channel)
{
    ADC12CTL0 = ADC12SHT0_4 | ADC12ON;
    ADC12CTL1 = ADC12SHP;
    ADC12CTL2 = ADC12RES_2;
    ADC12MCTL0 = channel;
    ADC12IER0 = ADC12IE0;
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    __bis_SR_register(LPM3_bits | GIE);
    ADC12CTL0 &= ~ADC12ENC;
    ADC12CTL0 = 0;
    return sample;
}

uint16_t thermometers_difference(void)
{
    uint16_t flow;
    uint16_t back;

    P2OUT |= SUPPLY;
    flow = measure(ADC12INCH_2);
    back = measure(ADC12INCH_12);
    P2OUT &= (uint8_t)~SUPPLY;
    return flow > back ? flow - back : 0;
}

__attribute__((interrupt(ADC12_VECTOR))) void on_sample(void)
{
    sample = ADC12MEM0;
    __bic_SR_register_on_exit(LPM3_bits);
}
