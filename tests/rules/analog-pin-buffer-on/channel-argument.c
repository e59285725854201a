// device: atmega328p
// The channel comes through an argument, from a table.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static const uint8_t channels[] = { 1, 3 };

static uint16_t sample(uint8_t channel)
{
    ADMUX = (uint8_t)(_BV(REFS0) | (channel & 0x0f)); // finding: analog-pin-buffer-on PC1 PC3 proven warning
    ADCSRA = _BV(ADEN) | _BV(ADSC) | _BV(ADPS2);
    while (ADCSRA & _BV(ADSC)) {
    }
    ADCSRA &= ~_BV(ADEN);
    return ADC;
}

int main(void)
{
    uint16_t sum = 0;
    DIDR0 = _BV(ADC0D);
    set_sleep_mode(SLEEP_MODE_IDLE);
    for (;;) {
        for (uint8_t i = 0; i < 2; i++) {
            sum += sample(channels[i]); // related: analog-pin-buffer-on {{sample()}}
        }
        PORTB = (uint8_t)sum;
        sleep_mode();
    }
}
