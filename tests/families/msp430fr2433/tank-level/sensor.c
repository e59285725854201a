#include "sensor.h"

#include "supply.h"

static volatile uint16_t level;

void sensor_init(void)
{
    ADCCTL0 = ADCSHT_2;
    ADCCTL1 = ADCSHP;
    ADCCTL2 = ADCRES;
    ADCMCTL0 = ADCSREF_0 | ADCINCH_5;
    ADCIE = ADCIE0;
}

uint16_t sensor_read(void)
{
    P2OUT |= FLOAT_SUPPLY;
    ADCCTL0 |= ADCON;
    __disable_interrupt();
    ADCCTL0 |= ADCENC | ADCSC;
    __bis_SR_register(LPM4_bits | GIE);
    ADCCTL0 &= ~ADCENC;
    ADCCTL0 &= ~ADCON;
    P2OUT &= (uint8_t)~FLOAT_SUPPLY;
    return level;
}

__attribute__((interrupt(ADC_VECTOR))) void on_level(void)
{
    level = ADCMEM0;
    __bic_SR_register_on_exit(LPM4_bits);
}
