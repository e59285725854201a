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
    ADMUX = 4; // finding: analog-pin-buffer-on PC4 proven note {{awake}}
    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
    for (;;) {
        read_adc();
        ADCSRA &= ~_BV(ADEN);
        sleep_mode();
    }
}
