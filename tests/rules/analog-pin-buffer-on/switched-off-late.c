// device: atmega328p
// Switched off right before sleeping.
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
    ADCSRA = _BV(ADEN) | _BV(ADPS1) | _BV(ADPS2);
    ADMUX = 3;
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        read_adc();
        DIDR0 |= _BV(ADC3D);
        sleep_mode();
    }
}
