#include "gauge.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint16_t result;

ISR(ADC_vect)
{
    result = ADC;
}

void gauge_init(void)
{
    DIDR0 = _BV(ADC0D) | _BV(ADC1D);
}

uint16_t gauge_read(uint8_t channel)
{
    PRR0 &= (uint8_t)~_BV(PRADC);
    ADMUX = (uint8_t)(_BV(REFS0) | channel);
    ADCSRA = _BV(ADEN) | _BV(ADIE) | _BV(ADPS1) | _BV(ADPS0);
    set_sleep_mode(SLEEP_MODE_ADC);
    sleep_mode();
    ADCSRA = 0;
    PRR0 |= _BV(PRADC);
    return result;
}
