#include "probe.h"

#include <msp430.h>
#include <stdint.h>

#define PROBE BIT0

static uint16_t log[1024];
static uint16_t used;

void probe_init(void)
{
    P6SEL |= PROBE;
    ADC12CTL0 = ADC12SHT0_8;
    ADC12CTL1 = ADC12SHP;
    ADC12MCTL0 = ADC12INCH_0;
}

void probe_log(void)
{
    ADC12CTL0 |= ADC12ON;
    ADC12IE = ADC12IE0;
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    __bis_SR_register(LPM3_bits | GIE); // finding: full-power-regulator SVSH proven warning
    ADC12CTL0 &= ~ADC12ENC;
    ADC12CTL0 &= ~ADC12ON;
    ADC12IE = 0;
    log[used++ % 1024] = ADC12MEM0;
}

#pragma vector = ADC12_VECTOR
__interrupt void on_sample(void)
{
    ADC12IFG = 0;
    __bic_SR_register_on_exit(LPM3_bits);
}
