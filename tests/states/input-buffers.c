// device: atmega1284p
// flags: -DF_CPU=8000000UL
// Analog inputs with their input buffers off, from a list of channels.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static const uint8_t channels[] = {0, 2, 7};

EMPTY_INTERRUPT(ADC_vect)

int main(void)
{
    uint8_t mask = 0;
    for (uint8_t i = 0; i < sizeof channels; i++)
        mask |= _BV(channels[i]);
    DIDR0 = mask;
    DIDR1 = _BV(AIN0D) | _BV(AIN1D);
    PORTA = ~mask;
    PORTB = 0xF3;
    DDRC = DDRD = 0xFF;
    ADCSRA = _BV(ADEN) | _BV(ADIE) | _BV(ADPS2) | _BV(ADPS1);
    set_sleep_mode(SLEEP_MODE_ADC);
    sei();
    uint8_t next = 0;
    for (;;) {
        ADMUX = _BV(REFS0) | channels[next];
        next = next == sizeof channels - 1 ? 0 : next + 1;
        sleep_mode(); // state: DIDR0 = 0x85, PORTA = 0x7a, DIDR1 = 0x03, DDRC = 0xff
    }
}
