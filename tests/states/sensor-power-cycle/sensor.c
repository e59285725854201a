#include "node.h"

uint16_t sensor_read(void)
{
    uint16_t sum = 0;
    PORTB |= _BV(SENSOR_SUPPLY);
    ADMUX = _BV(REFS0);
    ADCSRA = _BV(ADEN) | _BV(ADPS2) | _BV(ADPS1);
    for (uint8_t i = 0; i < 4; i++) {
        ADCSRA |= _BV(ADSC);
        while (ADCSRA & _BV(ADSC))
            ;
        sum += ADC;
    }
    ADCSRA &= ~_BV(ADEN);
    PORTB &= ~_BV(SENSOR_SUPPLY);
    return sum / 4;
}
