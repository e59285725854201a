#include "perch.h"

#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/power.h>
#include <avr/sleep.h>

#include "pins.h"

static volatile uint8_t taken;
static volatile uint8_t came;
static volatile uint8_t weighed;

ISR(PCINT1_vect)
{
    taken = 1;
}

ISR(PCINT2_vect)
{
    came = 1;
}

ISR(ADC_vect)
{
    weighed = 1;
}

void perch_init(void)
{
    PCMSK1 = _BV(PCINT11);
    PCMSK2 = _BV(PCINT16);
    PCICR = _BV(PCIE1) | _BV(PCIE2);
    sei();
}

enum perch_event perch_wait(void)
{
    enum perch_event event;

    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    cli();
    while (!taken && !came) {
        sleep_enable();
        sleep_bod_disable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    event = taken ? PERCH_TAKEN : READER_CAME;
    taken = 0;
    came = 0;
    sei();
    return event;
}

uint16_t perch_weight(void)
{
    uint16_t weight;

    power_adc_enable();
    PORTA |= _BV(BRIDGE_FEED);
    ADMUX = _BV(REFS0) | WEIGHT_INPUT;
    ADCSRA = _BV(ADEN) | _BV(ADIE) | _BV(ADPS1) | _BV(ADPS0);
    weighed = 0;
    set_sleep_mode(SLEEP_MODE_ADC);
    cli();
    while (!weighed) {
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
        cli();
    }
    sei();
    weight = ADC;
    ADCSRA = 0;
    PORTA &= (uint8_t)~_BV(BRIDGE_FEED);
    power_adc_disable();
    return weight;
}
