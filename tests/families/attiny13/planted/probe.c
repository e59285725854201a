#include "probe.h"

void probe_init(void)
{
    ACSR = _BV(ACD);
    DIDR0 = _BV(ADC1D);
    ADMUX = _BV(MUX0);
    ADCSRA = _BV(ADEN) | _BV(ADPS1); // finding: peripheral-on-in-sleep ADC proven
}

uint16_t probe_read(void)
{
    ADCSRA |= _BV(ADSC);
    while (ADCSRA & _BV(ADSC)) // finding: polling-wait ADCSRA proven
        ;
    return ADC;
}
