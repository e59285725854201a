// device: atmega328p
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
    DIDR0 = _BV(ADC0D);
    // clean: analog-pin-buffer-on PC0
    ADMUX = 0;
    read_adc();
    ADMUX = 1; // finding: analog-pin-buffer-on PC1 proven warning
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        read_adc();
        sleep_mode();
    }
}
