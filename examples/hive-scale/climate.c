#include "climate.h"

#include "chip.h"

enum channel
{
    BROOD_NEST = 0,
    BATTERY = 1,
};

void climate_init(void)
{
    ADCSRA = (1 << ADEN) | (1 << ADPS1) | (1 << ADPS0);
}

static uint16_t convert(enum channel channel)
{
    ADMUX = (uint8_t)((1 << REFS0) | channel);
    ADCSRA |= 1 << ADSC;
    while (ADCSRA & (1 << ADSC))
        ;
    return ADC;
}

uint16_t climate_brood_nest(void)
{
    return convert(BROOD_NEST);
}

uint16_t climate_battery(void)
{
    return convert(BATTERY);
}
