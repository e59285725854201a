#include "probe.h"

#include "board.h"

static volatile uint16_t sample;

void probe_init(void)
{
    ADC12CTL0 = ADC12SHT0_4;
    ADC12CTL1 = ADC12SHP;
    ADC12CTL2 = ADC12RES_2;
    ADC12MCTL0 = ADC12INCH_3;
    ADC12IER0 = ADC12IE0;
}

/* The divider is fed for the time of one conversion, which the CPU sleeps through. */
uint16_t probe_read(void)
{
    P4OUT |= DIVIDER_SUPPLY;
    ADC12CTL0 |= ADC12ON;
    __disable_interrupt();
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    __bis_SR_register(LPM3_bits | GIE);
    ADC12CTL0 &= ~ADC12ENC;
    ADC12CTL0 &= ~ADC12ON;
    P4OUT &= ~DIVIDER_SUPPLY;
    return sample;
}

__attribute__((interrupt(ADC12_VECTOR))) void on_sample(void)
{
    sample = ADC12MEM0;
    __bic_SR_register_on_exit(LPM3_bits);
}
