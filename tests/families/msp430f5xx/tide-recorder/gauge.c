#include "gauge.h"

#include <stdbool.h>

#include "board.h"

static uint16_t heights[GAUGE_HEIGHTS];
static uint8_t newest;
static volatile bool is_done;
static uint16_t sum;

void gauge_init(void)
{
    P6SEL |= BRIDGE;
    ADC12CTL0 = ADC12SHT0_6 | ADC12MSC;
    ADC12CTL1 = ADC12SHP | ADC12CONSEQ_1;
    ADC12MCTL0 = ADC12INCH_0;
    ADC12MCTL1 = ADC12INCH_1 | ADC12EOS;
}

uint16_t gauge_measure(void)
{
    P4OUT |= BRIDGE_SUPPLY;
    /* The bridge has settled by the time that the converter has woken. */
    ADC12CTL0 |= ADC12ON;
    ADC12IE = ADC12IE1;
    is_done = false;
    ADC12CTL0 |= ADC12ENC | ADC12SC;
    __disable_interrupt();
    while (!is_done) {
        /* The converter's own oscillator needs no clock of the part. */
        __bis_SR_register(LPM4_bits | GIE);
        __disable_interrupt();
    }
    __enable_interrupt();
    ADC12IE = 0;
    ADC12CTL0 &= ~ADC12ENC;
    ADC12CTL0 &= ~ADC12ON;
    P4OUT &= (uint8_t)~BRIDGE_SUPPLY;
    return sum;
}

void gauge_store(uint16_t height)
{
    newest = newest + 1 < GAUGE_HEIGHTS ? newest + 1 : 0;
    heights[newest] = height;
}

const uint16_t *gauge_heights(void)
{
    return heights;
}

#pragma vector = ADC12_VECTOR
__interrupt void on_converted(void)
{
    sum = 0x800 + ADC12MEM0 - ADC12MEM1;
    is_done = true;
    __bic_SR_register_on_exit(LPM4_bits);
}
