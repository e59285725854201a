#include "thermometer.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "board.h"

#define PRESCALER_8 (_BV(ADPS1) | _BV(ADPS0))

static volatile uint8_t converted;

ISR(ADC_vect)
{
    converted = 1;
}

uint16_t thermometer_read(void)
{
    uint16_t level;

    power_adc_enable();
    PORTC |= _BV(THERMISTOR_FEED);
    ADMUX = _BV(REFS0) | THERMISTOR;
    converted = 0;
    ADCSRA = _BV(ADEN) | _BV(ADIE) | PRESCALER_8;

    /* Going to sleep in this mode starts the conversion. */
    set_sleep_mode(SLEEP_MODE_ADC);
    cli();
    while (!converted) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();

    level = ADC;
    ADCSRA = 0;
    PORTC &= (uint8_t)~_BV(THERMISTOR_FEED);
    power_adc_disable();
    return level;
}
