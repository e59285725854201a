// device: attiny85
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static uint16_t read_adc(void)
{
    ADCSRA |= _BV(ADSC);
    while (ADCSRA & _BV(ADSC)) {
    }
    return ADC;
}

int main(void)
{
    DIDR0 = _BV(ADC1D);
    ADCSRA = _BV(ADEN) | _BV(ADPS1) | _BV(ADPS2);
    ADMUX = 1;
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        read_adc();
        sleep_mode();
    }
}
