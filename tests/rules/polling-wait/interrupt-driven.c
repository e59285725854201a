// device: atmega328p
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t done;

ISR(ADC_vect)
{
    done = 1;
}

int main(void)
{
    ADCSRA = _BV(ADEN) | _BV(ADIE);
    set_sleep_mode(SLEEP_MODE_ADC);
    sei();
    for (;;) {
        done = 0;
        ADCSRA |= _BV(ADSC);
        sleep_mode();
    }
}
