#include "climate.h"

#include "chip.h"
#include "power.h"

enum channel
{
    BROOD_NEST = 0,
    BATTERY = 1,
};

static volatile uint8_t converted;

ISR(ADC_vect)
{
    converted = 1;
}

static uint16_t convert(enum channel channel)
{
    converted = 0;
    ADMUX = (uint8_t)((1 << REFS0) | channel);
    ADCSRA = (1 << ADEN) | (1 << ADIE) | (1 << ADPS1) | (1 << ADPS0) | (1 << ADSC);
    while (!converted)
        SLEEP_UNLESS(converted, QUIET_SLEEP);

    uint16_t level = ADC;
    ADCSRA = 0;
    return level;
}

uint16_t climate_brood_nest(void)
{
    return convert(BROOD_NEST);
}

uint16_t climate_battery(void)
{
    return convert(BATTERY);
}
