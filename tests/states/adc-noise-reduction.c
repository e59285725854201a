// device: atmega328p
// flags: -DF_CPU=1000000UL
// Sleeping in ADC mode starts a conversion; its interrupt ends the sleep.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint16_t moisture;

ISR(ADC_vect)
{
    moisture = ADC;
}

static void sample(uint8_t channel)
{
    ADMUX = _BV(REFS0) | (channel & 0x0F);
    ADCSRA |= _BV(ADIE);
    set_sleep_mode(SLEEP_MODE_ADC);
    sleep_enable();
    sei();
    sleep_cpu(); // state: ADMUX = 0b0100_0011, ADCSRA.ADEN = 1, ADCSRA.ADIE = 1
    sleep_disable();
    cli();
    ADCSRA &= ~(_BV(ADIE) | _BV(ADEN));
}

int main(void)
{
    DIDR0 = _BV(ADC3D);
    DDRB = 0xFF;
    for (;;) {
        ADCSRA = _BV(ADEN) | _BV(ADPS1) | _BV(ADPS0);
        sample(3);
        PRR |= _BV(PRUSART0);
        OCR1A = moisture;
    }
}
